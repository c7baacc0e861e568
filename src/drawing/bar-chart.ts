import { type Drawing, type Mark, rectangle, textWidth } from './drawing';
import { fieldWidth, layOut, type NamedRow, rowHeight, rowTexts } from './rows';

/** Amounts of one kind beside one another, from zero. Numbers are exact and in one unit. */
export interface BarChart {
  readonly title: string;
  readonly description: string;
  readonly bars: readonly (NamedRow & { readonly value: number })[];
  /** A line across the bars, such as their mean. */
  readonly across?: { readonly value: number; readonly text: string };
}

const barHeight = 12;
const head = rowHeight;

/** Bars that lie below one another, each with its name before and its figure behind it. */
export function drawBars({ title, description, bars, across }: BarChart): Drawing {
  const field = layOut(bars);
  const most = Math.max(0, across?.value ?? 0, ...bars.map(({ value }) => value));
  const x = (value: number) => field.left + (most > 0 ? (Math.max(0, value) / most) * fieldWidth : 0);
  const bottom = head + bars.length * rowHeight;
  return {
    title,
    description,
    width: field.width,
    height: bottom + 6,
    marks: [
      ...bars.flatMap((bar, i): Mark[] => {
        const y = head + (i + 0.5) * rowHeight;
        const corners = rectangle(field.left, y - barHeight / 2, x(bar.value), y + barHeight / 2);
        return [
          ...rowTexts(bar, field, y),
          ...(bar.value > 0 ? [{ shape: 'area' as const, ink: 'bar' as const, points: corners }] : []),
        ];
      }),
      { shape: 'line', from: [field.left, head - 4], to: [field.left, bottom + 4], ink: 'base' },
      ...(across ? acrossMarks(across.text, x(across.value), bottom, field.width) : []),
    ],
  };
}

function acrossMarks(text: string, x: number, bottom: number, width: number): Mark[] {
  const half = textWidth(text) / 2;
  const at = Math.max(half, Math.min(x, width - half));
  return [
    { shape: 'text', at: [at, 12], text, anchor: 'middle', ink: 'side' },
    { shape: 'line', from: [x, head - 4], to: [x, bottom + 4], ink: 'mean' },
  ];
}
