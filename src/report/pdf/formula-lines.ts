import { sidesOf } from '../formula-sides';
import type { Picture, Typesetter } from './typesetter';

/** A formula in lines no wider than `width` points: broken before its equals signs, and made smaller where that is not enough. */
export function formulaLines(typesetter: Typesetter, latex: string, width: number): Picture[] {
  const whole = typesetter.set(latex);
  if (whole.width <= width) {
    return [whole];
  }
  const sides = sidesOf(latex);
  const lines: string[] = [];
  for (const side of sides) {
    const longer = lines.length > 0 ? `${lines.at(-1)} = ${side}` : side;
    if (lines.length > 0 && typesetter.set(longer).width > width) {
      lines.push(`\\quad = ${side}`);
    } else {
      lines[Math.max(0, lines.length - 1)] = longer;
    }
  }
  return lines.map((line) => fitted(typesetter.set(line), width));
}

function fitted(picture: Picture, width: number): Picture {
  const scale = Math.min(1, width / picture.width);
  return {
    svg: picture.svg,
    width: picture.width * scale,
    height: picture.height * scale,
    depth: picture.depth * scale,
  };
}
