/** A formula as a PDF draws it, in its own coordinates: y runs downwards from the top of the box. */
export interface FormulaDrawing {
  /** Operators that place glyphs by their names and fill boxes. */
  readonly operators: string;
  readonly glyphs: readonly Glyph[];
  readonly box: { readonly left: number; readonly top: number; readonly height: number };
}

/** An outline that comes back again and again: it is in the document once. */
export interface Glyph {
  readonly name: string;
  readonly outline: string;
}

/** As a PDF writes it: x' = a x + c y + e, y' = b x + d y + f. */
type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const identity: Matrix = [1, 0, 0, 1, 0, 0];

/**
 * Reads the typesetter’s picture, which is made of groups, glyphs and boxes; `known` collects the glyphs. Undefined where
 * there is anything else, such as a text in another font: such a picture has to be drawn by a library that knows SVG.
 */
export function drawingOf(svg: string, known: Map<string, Glyph>): FormulaDrawing | undefined {
  const operators: string[] = [];
  const glyphs = new Set<Glyph>();
  const groups: Matrix[] = [];
  for (const [, closing, tag, attributes] of svg.matchAll(/<(\/?)(\w+)([^>]*)>/g)) {
    if (closing) {
      groups.length -= tag === 'g' ? 1 : 0;
      continue;
    }
    if (tag === 'svg' && groups.length === 0) {
      continue;
    }
    const at = transformed(groups.at(-1) ?? identity, attribute(attributes, 'transform') ?? '');
    if (!at) {
      return undefined;
    }
    if (tag === 'g') {
      groups.push(at);
    } else if (tag === 'path') {
      const outline = attribute(attributes, 'd') ?? '';
      if (outline !== '') {
        const glyph = known.get(outline) ?? { name: `Glyph${known.size + 1}`, outline };
        known.set(outline, glyph);
        glyphs.add(glyph);
        operators.push(`q ${numbers(at)} cm /${glyph.name} Do Q`);
      }
    } else if (tag === 'rect') {
      const box = ['x', 'y', 'width', 'height'].map((name) => Number(attribute(attributes, name) ?? 0));
      operators.push(`q ${numbers(at)} cm ${numbers(box)} re f Q`);
    } else {
      return undefined;
    }
  }
  const [left, top, , height] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  return { operators: operators.join('\n'), glyphs: [...glyphs], box: { left, top, height } };
}

const attribute = (attributes: string, name: string): string | undefined =>
  new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(attributes)?.[1];

function transformed(outer: Matrix, transform: string): Matrix | undefined {
  let at = outer;
  for (const [, name, given] of transform.matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [first, second] = given.split(/[\s,]+/).map(Number);
    if (name === 'translate') {
      at = times(at, [1, 0, 0, 1, first, second ?? 0]);
    } else if (name === 'scale') {
      at = times(at, [first, 0, 0, second ?? first, 0, 0]);
    } else {
      return undefined;
    }
  }
  return at;
}

/** The inner one first, then the outer. */
const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + c * B,
  b * A + d * B,
  a * C + c * D,
  b * C + d * D,
  a * E + c * F + e,
  b * E + d * F + f,
];

/** In no more digits than show on paper: a unit is a thousandth of the size of the letters. */
export const numbers = (values: readonly number[]): string =>
  values.map((value) => String(Math.round(value * 1e4) / 1e4)).join(' ');
