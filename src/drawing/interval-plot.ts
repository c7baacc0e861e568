import { type Drawing, type Mark, type Point, rectangle, textWidth } from './drawing';
import { baseline, type Field, fieldWidth, layOut, type NamedRow, rowHeight, rowTexts } from './rows';

/** What is known of a value beside the limit it is held against. Numbers are exact and in one unit. */
export interface IntervalPlot {
  readonly title: string;
  readonly description: string;
  readonly limit: { readonly value: number; readonly text: string };
  /** What a value means that lies below, and one that lies above the limit. */
  readonly sides: readonly [below: string, above: string];
  readonly rows: readonly IntervalRow[];
}

export interface IntervalRow extends NamedRow {
  /** `best` is one value, `band` where it is likely to lie, `span` where it is certain to. */
  readonly form: 'best' | 'band' | 'span';
  /** Infinite where there is no end. */
  readonly low: number;
  readonly high: number;
}

/** So far from the limit is a mark at least that does not lie on it, so that nobody takes it for one that does. */
const apart = 3;

/** Height of the head: the limit's figure, then what lies on its sides. */
const head = 2 * rowHeight - 6;

/** A value's best estimate and its bounds as bars, one below the other, with a line through all of them at the limit. */
export function drawIntervals({ title, description, limit, sides, rows }: IntervalPlot): Drawing {
  const field = layOut(rows);
  const place = placing(field, limit.value, rows, sides);
  const bottom = head + rows.length * rowHeight;
  const x = place(limit.value);
  const half = textWidth(limit.text) / 2;
  const labelled = Math.max(half, Math.min(x, field.width - half));
  return {
    title,
    description,
    width: field.width,
    height: bottom + 6,
    marks: [
      { shape: 'text', at: [labelled, 12], text: limit.text, anchor: 'middle', ink: 'figure' },
      { shape: 'text', at: [x - 8, head - 6 + baseline - 4], text: sides[0], anchor: 'end', ink: 'side' },
      { shape: 'text', at: [x + 8, head - 6 + baseline - 4], text: sides[1], anchor: 'start', ink: 'side' },
      ...rows.flatMap((row, i) => {
        const y = head + (i + 0.5) * rowHeight;
        return [...rowTexts(row, field, y), ...rowMarks(row, place, field, y)];
      }),
      { shape: 'line', from: [x, 17], to: [x, bottom + 4], ink: 'limit' },
    ],
  };
}

/** From a number to its place. The limit keeps room for a word on either side, and what is not on it stays off it. */
function placing(
  { left, right }: Field,
  limit: number,
  rows: readonly IntervalRow[],
  sides: readonly [string, string],
): (value: number) => number {
  const ends = [limit, ...rows.flatMap(({ low, high }) => [low, high])].filter(Number.isFinite);
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const below = (limit - least) / (most - least || 1);
  const margin = fieldWidth * 0.08;
  const [least_x, most_x] = [
    Math.max(margin, textWidth(sides[0]) + 10),
    fieldWidth - Math.max(margin, textWidth(sides[1]) + 10),
  ];
  // Drawn as wide as can be: the limit between the words of its sides, everything else within the margins.
  const room = fieldWidth - 2 * margin;
  const at = most === least ? fieldWidth / 2 : Math.min(most_x, Math.max(least_x, margin + below * room));
  const scale = Math.min(
    limit > least ? (at - margin) / (limit - least) : Number.POSITIVE_INFINITY,
    most > limit ? (fieldWidth - margin - at) / (most - limit) : Number.POSITIVE_INFINITY,
  );
  return (value) => {
    if (value === limit) {
      return left + at;
    }
    const away = Number.isFinite(value) ? (value - limit) * scale : Math.sign(value) * fieldWidth;
    const kept = Math.sign(value - limit) * Math.max(apart, Math.abs(away));
    return Math.max(left, Math.min(right, left + at + kept));
  };
}

function rowMarks({ form, low, high }: IntervalRow, place: (value: number) => number, field: Field, y: number): Mark[] {
  const [from, to] = [place(low), place(high)];
  switch (form) {
    case 'best':
      return [{ shape: 'area', ink: 'best', points: diamond(from, y) }];
    case 'band':
      return [{ shape: 'area', ink: 'band', points: rectangle(from, y - 6, Math.max(to, from + 2), y + 6) }];
    case 'span':
      return [
        { shape: 'line', from: [from, y], to: [to, y], ink: 'span' },
        ...endMarks(low, from, field.left, y),
        ...endMarks(high, to, field.right, y),
      ];
  }
}

const diamond = (x: number, y: number): readonly Point[] => [
  [x, y - 6],
  [x + 6, y],
  [x, y + 6],
  [x - 6, y],
];

/** A stroke across where there is an end, an arrowhead where there is none. */
function endMarks(value: number, x: number, edge: number, y: number): Mark[] {
  if (Number.isFinite(value)) {
    return [{ shape: 'line', from: [x, y - 5], to: [x, y + 5], ink: 'span' }];
  }
  const back = value > 0 ? edge - 6 : edge + 6;
  return [
    { shape: 'line', from: [back, y - 5], to: [edge, y], ink: 'span' },
    { shape: 'line', from: [back, y + 5], to: [edge, y], ink: 'span' },
  ];
}
