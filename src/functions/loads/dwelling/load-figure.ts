import type { Call } from '../../../language';
import { tablesOf } from '../../settings';

/** A single figure of the load rules, shown under `symbol` with where it stands. Not a number where an edition has none. */
export function loadFigure(call: Call, rule: string, symbol: string): number {
  const found = tablesOf(call).loadRule(rule);
  if (!found) {
    return Number.NaN;
  }
  call.table({ symbol, value: found.row.value, unit: found.row.unit, source: found.source, row: found.shown });
  return found.row.value;
}
