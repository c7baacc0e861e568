/** What a compiled statement uses beside its instructions. */
export interface Storage {
  /** How many slots its value takes. */
  readonly size: number;
  /** Slots it uses beside: pairs of slot and size. */
  readonly owned: readonly number[];
  /** True when it makes something uncertain: a reading, limits. */
  readonly takesReadings: boolean;
}

/** Shared by all that own none. */
export const noSlots: number[] = [];

/** Shared, because most statements use no more than the one slot of their value. */
export const plainStorage: Storage = { size: 1, owned: noSlots, takesReadings: false };

/** Where a statement's instructions lie, from `start` to `end`, and where its value. */
export interface StatementCode {
  readonly start: number;
  readonly end: number;
  readonly slot: number;
  readonly size: number;
}
