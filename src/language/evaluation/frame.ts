import { itemOf } from '../checking/lists';
import type { Meaning } from '../checking/meaning';
import type { Type } from '../checking/type';

/** Where names are found while one expression is compiled: its tree's meaning and the slots of local names. */
export interface Frame {
  readonly meaning: Meaning;
  readonly locals?: ReadonlyMap<string, number>;
  /** Slots of the items, by node, where an operator over lists is compiled for one item of each. */
  readonly items?: ReadonlyMap<number, number>;
  /** Slot of every node, when they are kept for looking at; else absent. */
  readonly slots?: Map<number, number>;
  /** Frames of the sheet's functions called here, by call node. */
  readonly inner?: Map<number, Frame>;
}

/** The type of a node; where an operator is compiled for one item of a list, the type of that item. */
export const typeIn = ({ meaning, items }: Frame, node: number): Type =>
  items ? itemOf(meaning.types[node]) : meaning.types[node];
