import type { Found } from '../../tables';

/** The cells of a row that a step is about: the columns with these headings, in the table's order. */
export const cellsOf = (
  found: Pick<Found<unknown>, 'shown'>,
  ...headings: readonly string[]
): Found<unknown>['shown'] => found.shown.filter(([heading]) => headings.includes(heading));
