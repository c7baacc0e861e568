import type { Meaning } from '../checking/meaning';

/** Where names are found while one expression is compiled: its tree's meaning and the slots of local names. */
export interface Frame {
  readonly meaning: Meaning;
  readonly locals?: ReadonlyMap<string, number>;
  /** Slot of every node, when they are kept for looking at; else absent. */
  readonly slots?: Map<number, number>;
  /** Frames of the sheet's functions called here, by call node. */
  readonly inner?: Map<number, Frame>;
}
