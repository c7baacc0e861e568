import { type Drawing, type Ink, letterHeight, type Mark, type Point } from './drawing';

/** One element of a picture, for a host to build or to write. */
export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (SvgElement | string)[];
}

/** Attributes that paint a mark: a class that a style sheet knows, or the paint itself. */
export type Paint = (ink: Ink) => Readonly<Record<string, string>>;

/** The class of a mark. */
const inkClass: Paint = (ink) => ({ class: `kf-${ink}` });

/** The picture as elements, with its name and what it says for those who do not see it. */
export const svgOf = ({ title, description, width, height, marks }: Drawing, paint: Paint = inkClass): SvgElement => ({
  name: 'svg',
  attributes: {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${number(width)} ${number(height)}`,
    width: number(width),
    height: number(height),
    role: 'img',
    class: 'kf-drawing',
    'font-size': number(letterHeight),
  },
  children: [
    element('title', {}, title),
    element('desc', {}, description),
    ...marks.map((mark) => markOf(mark, paint)),
  ],
});

function markOf(mark: Mark, paint: Paint): SvgElement {
  const painted = paint(mark.ink);
  switch (mark.shape) {
    case 'line': {
      const { from, to } = mark;
      return element('path', { d: `M${point(from)}L${point(to)}`, ...painted });
    }
    case 'area':
      return element('path', { d: `M${mark.points.map(point).join('L')}Z`, ...painted });
    case 'text': {
      const [x, y] = mark.at;
      return element('text', { x: number(x), y: number(y), 'text-anchor': mark.anchor, ...painted }, mark.text);
    }
  }
}

const element = (name: string, attributes: SvgElement['attributes'], ...children: string[]): SvgElement => ({
  name,
  attributes,
  children,
});

/** Hundredths of a pixel are finer than anybody sees. */
const number = (value: number): string => String(Math.round(value * 100) / 100);

const point = ([x, y]: Point): string => `${number(x)} ${number(y)}`;

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => entities[c]).replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');

/** The picture as text, to stand in a page or a file. */
export function svgText({ name, attributes, children }: SvgElement): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : svgText(child)));
  return `<${name}${written.join('')}>${inside.join('')}</${name}>`;
}
