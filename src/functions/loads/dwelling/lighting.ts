import { type Call, defineFormula } from '../../../language';
import { tablesOf } from '../../settings';
import { loadFigure } from './load-figure';
import type { Dwelling } from './parameters';

const byArea = defineFormula({
  symbol: 'S_lighting',
  text: 'n * s * A',
  units: { n: '', s: 'VA/ft²', A: 'ft²' },
  result: 'VA',
});
const byCircuits = defineFormula({
  symbol: 'S_circuits',
  text: 'n * (n_kitchen * S_kitchen + n_laundry * S_laundry)',
  units: { n: '', n_kitchen: '', S_kitchen: 'VA', n_laundry: '', S_laundry: 'VA' },
  result: 'VA',
});
const connected = defineFormula({
  symbol: 'S_connected',
  text: 'S_lighting + S_circuits',
  units: { S_lighting: 'VA', S_circuits: 'VA' },
  result: 'VA',
});

/** Connected load in VA of general lighting, small-appliance and laundry circuits (NEC 220.41, 220.52). */
export function lightingConnected(call: Call, dwelling: Dwelling): number {
  const { area, units, small_appliance_circuits, laundry_circuits } = dwelling;
  const found = tablesOf(call).lightingLoad('dwelling');
  const s = found?.row.voltAmperesPerFt2 ?? Number.NaN;
  if (found) {
    call.table({ symbol: 's', value: s, unit: 'VA/ft²', source: found.source, row: found.shown });
  }
  const S_kitchen = loadFigure(call, 'small-appliance circuit', 'S_kitchen');
  const S_laundry = laundry_circuits > 0 ? loadFigure(call, 'laundry circuit', 'S_laundry') : 0;
  return connected(call, {
    S_lighting: byArea(call, { n: units, s, A: area }),
    S_circuits: byCircuits(call, {
      n: units,
      n_kitchen: small_appliance_circuits,
      S_kitchen,
      n_laundry: laundry_circuits,
      S_laundry,
    }),
  });
}
