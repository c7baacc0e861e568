import { letterHeight, type Mark, textWidth } from './drawing';

/** One row of a drawing that is laid out as a table is: what it is, its marks, and its figures in words. */
export interface NamedRow {
  readonly name: string;
  readonly figures: string;
}

/** Where the marks of the rows stand, left to right. */
export interface Field {
  readonly left: number;
  readonly right: number;
}

/** How wide the field is in which the marks stand. */
export const fieldWidth = 280;
export const rowHeight = 20;

const gap = 12;

/** The field between the rows' names and their figures, and the width of all three. */
export function layOut(rows: readonly NamedRow[]): Field & { readonly width: number } {
  const left = Math.max(...rows.map(({ name }) => textWidth(name))) + gap;
  const right = left + fieldWidth;
  return { left, right, width: Math.ceil(right + gap + Math.max(...rows.map(({ figures }) => textWidth(figures)))) };
}

/** The name and the figures of a row whose middle is at `y`. */
export const rowTexts = ({ name, figures }: NamedRow, { right }: Field, y: number): Mark[] => [
  { shape: 'text', at: [0, y + baseline], text: name, anchor: 'start', ink: 'name' },
  { shape: 'text', at: [right + gap, y + baseline], text: figures, anchor: 'start', ink: 'figure' },
];

/** From the middle of a line of text down to where its letters stand. */
export const baseline = letterHeight / 3;
