import type { Call } from '../../language';
import type { Found, StandardRatingRow } from '../../tables';

/** A standard rating in amperes, shown with its row and why it is the one. */
export function shownRating(call: Call, found: Found<StandardRatingRow>, remark: string): number {
  call.table({
    symbol: 'I_n',
    value: found.row.rating,
    unit: 'A',
    source: found.source,
    row: found.shown,
    remark,
  });
  return found.row.rating;
}
