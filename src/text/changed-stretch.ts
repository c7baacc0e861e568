/** Where two lists differ. What stands before `start` is the same in both, and so is all behind the two ends. */
export interface ChangedStretch {
  readonly start: number;
  /** Where it ends in the list as it was, and as it is now. */
  readonly oldEnd: number;
  readonly newEnd: number;
}

/**
 * The shortest stretch such that both lists are the same before and behind it. An object that stands in both lists counts
 * as the same without a look into it, so that a long list of which most is kept costs next to nothing.
 */
export function changedStretch<T>(
  before: readonly T[],
  after: readonly T[],
  isSame: (before: T, after: T) => boolean,
): ChangedStretch {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && (before[start] === after[start] || isSame(before[start], after[start]))) {
    start++;
  }
  let oldEnd = before.length;
  let newEnd = after.length;
  while (
    oldEnd > start &&
    newEnd > start &&
    (before[oldEnd - 1] === after[newEnd - 1] || isSame(before[oldEnd - 1], after[newEnd - 1]))
  ) {
    oldEnd--;
    newEnd--;
  }
  return { start, oldEnd, newEnd };
}

/** The list with other items in place of a stretch. */
export const withStretch = <T>(list: readonly T[], start: number, end: number, items: readonly T[]): readonly T[] =>
  list.slice(0, start).concat(items, list.slice(end));
