import { createTables, type Tables } from '../../../src/tables';
import type { Subject } from '../../../src/tables/subject';
import { tableInForce } from '../../../src/tables/table';

/** One value of ours and the bounds that an independent formula or table sets for it, in the same unit. */
export interface Comparison {
  readonly what: string;
  readonly ours: number;
  readonly low: number;
  readonly high: number;
}

/** A whole table, or a function over its range, held against something that it was not made from. */
export interface CrossCheck {
  readonly title: string;
  /** What it is held against. */
  readonly formula: string;
  readonly source: string;
  /** What the room between the bounds is for. */
  readonly leeway: string;
  /** Ids of the tables, and names of the functions, that this proves something about. */
  readonly tables?: readonly string[];
  readonly functions?: readonly string[];
  readonly compare: () => readonly Comparison[];
}

/** Within a fraction of the outside value. */
export const about = (what: string, ours: number, outside: number, fraction: number): Comparison => ({
  what,
  ours,
  low: outside - fraction * Math.abs(outside),
  high: outside + fraction * Math.abs(outside),
});

/** Within a distance of the outside value. */
export const within = (what: string, ours: number, outside: number, distance: number): Comparison => ({
  what,
  ours,
  low: outside - distance,
  high: outside + distance,
});

/** Never falls from one to the next: each value is bounded by the one before it. */
export const neverFalls = (values: readonly (readonly [what: string, value: number])[]): Comparison[] =>
  values.slice(1).map(([what, value], i) => ({ what, ours: value, low: values[i][1], high: Number.POSITIVE_INFINITY }));

export const tables = createTables({ edition: 'NEC 2023' }) as Tables;

/** Every row of a table in the newest edition, in its order. */
export const rowsOf = <Row>(subject: Subject<Row>): readonly Row[] => tableInForce(subject, 'NEC 2023', []).all;

/** Square millimetres in a circular mil, exactly. */
export const mm2PerCmil = (Math.PI / 4) * 0.0254 ** 2;
