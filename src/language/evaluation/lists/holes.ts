import { NoValue } from '../machine';

/** A place of a list that has no value: which one, and why. */
export interface Hole {
  /** With its list, as a message begins: `row 3 (`P3`) of `panel``, `item 3`. */
  readonly place: string;
  /** Behind `because` or a colon: `its cell `load` is empty`. */
  readonly why: string;
  /** True where a cell was left empty, or where what follows from one is wanted. */
  readonly isEmpty?: boolean;
  /** Where it arose by a formula that came to nothing; absent for what was never written. */
  readonly arose?: { readonly row: number; readonly column: string };
}

/** The places of a list that have no value, by index. A list without any has no such map. */
export type Holes = ReadonlyMap<number, Hole>;

/** Says that a list cannot be used whole, by the first of its places that has no value. */
export function holeMessage(what: string, holes: Holes | undefined): string {
  const first = holes?.get(firstOf(holes.keys()));
  if (!first) {
    return `${what} needs a value at every place of the list, and one has none.`;
  }
  const none = holes!.size > 1 ? ` has none, nor have ${holes!.size - 1} more` : ' has none';
  const advice = first.isEmpty ? 'Put it in, or leave such places out: `where known(…)`.' : 'Correct it there.';
  return `${what} needs every value, and ${first.place}${none}: ${first.why}. ${advice}`;
}

/** Stands for a list that could not be used because of its holes. */
export const missingItem = (what: string, holes: Holes | undefined, node?: number): NoValue =>
  new NoValue('missing-value', holeMessage(what, holes), node);

function firstOf(indices: Iterable<number>): number {
  let first = Number.POSITIVE_INFINITY;
  for (const index of indices) {
    first = Math.min(first, index);
  }
  return first;
}
