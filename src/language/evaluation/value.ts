import type { QuantityType, Unit } from '../../units';
import type { ObjectType } from '../checking/type';

/**
 * A result as it leaves the evaluator. Inside, quantities are floats in slots; a Value is made only for what is
 * shown, stored or handed on.
 */
export type Value =
  | QuantityValue
  | { readonly kind: 'boolean'; readonly value: boolean | 'cannot tell'; readonly doubt?: Doubt }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'choice'; readonly value: string }
  | { readonly kind: 'object'; readonly object: ObjectType; readonly value: unknown }
  | { readonly kind: 'record'; readonly name: string; readonly fields: ReadonlyMap<string, Value> }
  /** `schedule` where it is one: its items are the rows. */
  | { readonly kind: 'list'; readonly items: readonly Value[]; readonly schedule?: ScheduleView }
  | { readonly kind: 'meter'; readonly terms: readonly QuantityValue[] }
  /** A field that this record has no value for, and why. */
  | { readonly kind: 'absent'; readonly because: string };

/** What a schedule is beside its rows. */
export interface ScheduleView {
  /** In order; with the unit that a column of quantities is shown in. */
  readonly columns: readonly ScheduleColumn[];
  /** Of the columns whose sum says something: powers, energies, lengths, weights, prices. */
  readonly totals: readonly ColumnTotal[];
}

export interface ScheduleColumn {
  readonly name: string;
  /** False for one that its formula gives. */
  readonly isWritten: boolean;
  readonly unit?: Unit;
  readonly unitIsDerived?: boolean;
}

export interface ColumnTotal {
  readonly column: string;
  /** Of the rows that have a value; absent where a row has none because of a problem. */
  readonly total: Value;
  /** How many rows it is of, where cells are empty. */
  readonly rows?: number;
}

export interface QuantityValue {
  readonly kind: 'quantity';
  /** In the coherent SI unit of its dimension, full precision. */
  readonly base: number;
  readonly type: QuantityType;
  /** The unit it is shown in. */
  readonly unit: Unit;
  /** True when the unit follows from the arithmetic and not from what the author wrote, so that display may take a prefix. */
  readonly unitIsDerived: boolean;
  readonly uncertainty?: Uncertainty;
}

/** How sure a quantity is. All in the coherent SI unit. */
export interface Uncertainty {
  readonly standard: number;
  /** The 95 % coverage interval, never wider than the guaranteed limits. */
  readonly low: number;
  readonly high: number;
  readonly coverageFactor: number;
  /** The guaranteed half-width, every limit against us at once; absent where a source states none. */
  readonly limits?: number;
  /** What it comes from, largest first. */
  readonly sources: readonly { readonly name: string; readonly share: number }[];
}

/** What keeps a comparison from yes or no, and the cheapest way to settle it. */
export interface Doubt {
  readonly dominant: string;
  readonly advice: string;
}

export type Verdict = 'yes' | 'no' | 'cannot tell';
