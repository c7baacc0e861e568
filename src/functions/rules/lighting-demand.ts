import { type Call, defineFormula } from '../../language';
import { tablesOf } from '../settings';

const tier = defineFormula({
  symbol: 'S_part',
  text: 'k * S',
  units: { k: '%', S: 'VA' },
  result: 'VA',
});

/** Demand in VA of a connected lighting load, step by step of its occupancy's tiers (NEC Table 220.42, 220.45 in 2023). */
export function lightingDemand(call: Call, load: number, occupancy: string): number {
  let total = 0;
  for (const found of tablesOf(call).lightingDemand(occupancy)) {
    const { overVA, toVA, percent } = found.row;
    const part = Math.min(load, toVA ?? Number.POSITIVE_INFINITY) - overVA;
    if (part > 0) {
      call.table({ symbol: 'k', value: percent, unit: '%', source: found.source, row: found.shown });
      total += tier(call, { k: percent, S: part });
    }
  }
  return total;
}
