import { type Call, defineFormula, Failure } from '../../language';
import { tablesOf } from '../settings';
import { notWhole } from './whole-number';

const raised = defineFormula({
  symbol: 'P_demand',
  text: 'P_C * (1 + 5 % * n_over)',
  units: { P_C: 'kW', n_over: '' },
  result: 'kW',
});
const share = defineFormula({
  symbol: 'P_share',
  text: 'k * n * P',
  units: { k: '%', n: '', P: 'kW' },
  result: 'kW',
});

/** Ends in kW of the table’s columns: nameplate alone, A, B, C without and with its added 5 % for each kW. */
const ends = { nameplate: 1.75, a: 3.5, b: 8.75, c: 12, raisedC: 27 } as const;

/** Demand in kW of household cooking appliances of one rating in kW (NEC Table 220.55). */
export function rangeDemand(call: Call, count: number, rating: number): number | Failure {
  const wrong = notWhole(count, 'count', 'appliances');
  const found = tablesOf(call).rangeDemand(count);
  if (wrong || !found) {
    return wrong ?? new Failure('The range table has no row for that number.', 'count', 'not-in-table');
  }
  if (rating > ends.raisedC) {
    return new Failure('The range table ends at 27 kW each: take the nameplate.', 'rating', 'not-covered');
  }
  if (rating <= ends.nameplate) {
    call.assume('1.75 kW or less: nameplate, outside the table');
    return share(call, { k: 100, n: count, P: rating });
  }
  const { kilowattsC, kilowattsEach, percentA, percentB } = found.row;
  const columnC = kilowattsC + (kilowattsEach ?? 0) * count;
  call.table({ symbol: 'P_C', value: columnC, unit: 'kW', source: found.source, row: found.shown });
  if (rating > ends.c) {
    // A major part of a kilowatt counts as a whole one.
    return raised(call, { P_C: columnC, n_over: Math.floor(rating - ends.c + 0.5) });
  }
  if (rating > ends.b) {
    return columnC;
  }
  const k = rating < ends.a ? percentA : percentB;
  call.table({ symbol: 'k', value: k, unit: '%', source: found.source, row: found.shown });
  return Math.min(columnC, share(call, { k, n: count, P: rating }));
}
