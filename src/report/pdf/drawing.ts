import { type Ink, letterHeight, type Paint, svgOf, svgText } from '../../drawing';
import type { Part } from '../document';
import type { Content } from './inline-content';

/** Points in a pixel of 1/96 inch; a drawing stands on paper somewhat smaller than on a screen. */
const scale = 0.68;

const ink = '#1b1b1b';
const faint = '#555555';
const stroke = (colour: string, width: number, dash?: string) => ({
  fill: 'none',
  stroke: colour,
  'stroke-width': String(width),
  ...(dash !== undefined && { 'stroke-dasharray': dash }),
});
const filled = (fill: string) => ({ fill, stroke: ink, 'stroke-width': '1' });

/** What each mark is painted with: outlines and dashes tell them apart in black and white, too. */
const paints: Readonly<Record<Ink, Readonly<Record<string, string>>>> = {
  limit: stroke(ink, 2),
  mean: stroke(faint, 1.5, '4 3'),
  span: stroke(ink, 1.5),
  base: stroke(faint, 1),
  band: filled('#a9c4e6'),
  best: filled('#ffffff'),
  bar: filled('#a9c4e6'),
  name: { fill: ink },
  figure: { fill: ink },
  side: { fill: faint },
};

const paint: Paint = (mark) => paints[mark];

/** From the top of a line of text down to where its letters stand, in parts of their size. */
const ascent = 0.95;

/** Wider than any text of a drawing. */
const roomForText = 300;

/** A picture as it stands on the page, no wider than the text; its words are text of the page, not of the picture. */
export function drawingContent({ drawing, caption }: Part & { kind: 'drawing' }, width: number): Content {
  const fit = Math.min(scale, width / drawing.width);
  const size = letterHeight * fit;
  const texts = drawing.marks.flatMap((mark): Content[] => {
    if (mark.shape !== 'text') {
      return [];
    }
    const [x, y] = mark.at;
    const { alignment, before } = anchors[mark.anchor];
    return [
      {
        columns: [{ width: roomForText, text: mark.text, alignment, fontSize: size, color: paint(mark.ink).fill }],
        relativePosition: { x: x * fit - before * roomForText, y: y * fit - ascent * size },
      },
    ];
  });
  const shapes = { ...drawing, marks: drawing.marks.filter(({ shape }) => shape !== 'text') };
  const picture = { svg: svgText(svgOf(shapes, paint)), width: drawing.width * fit, height: drawing.height * fit };
  const below = caption === undefined ? [] : [{ text: caption, italics: true, fontSize: 8.5, margin: [0, 1, 0, 0] }];
  return { stack: [...texts, picture, ...below], unbreakable: true, margin: [0, 2, 0, 6] };
}

const anchors = {
  start: { alignment: 'left', before: 0 },
  middle: { alignment: 'center', before: 0.5 },
  end: { alignment: 'right', before: 1 },
} as const;
