import { type Call, defineFormula, Failure } from '../../language';
import { tablesOf } from '../settings';
import { notWhole } from './whole-number';

const demand = defineFormula({
  symbol: 'P_demand',
  text: 'k * n * max(P, 5 kW)',
  units: { k: '%', n: '', P: 'kW' },
  result: 'kW',
});

/** Demand in kW of household dryers of one rating in kW (NEC Table 220.54). */
export function dryerDemand(call: Call, count: number, rating: number): number | Failure {
  const wrong = notWhole(count, 'count', 'dryers');
  const found = tablesOf(call).dryerDemand(count);
  if (wrong || !found) {
    return wrong ?? new Failure('The dryer table has no row for that number.', 'count', 'not-in-table');
  }
  const { percent, lessPerDryer, beyond } = found.row;
  const k = percent - (lessPerDryer ?? 0) * (count - (beyond ?? count));
  call.table({ symbol: 'k', value: k, unit: '%', source: found.source, row: found.shown });
  return demand(call, { k, n: count, P: rating });
}
