import { type Call, defineFormula } from '../../../language';
import { sumOfParts } from '../../rules/sum-of-parts';
import { tablesOf } from '../../settings';
import { loadFigure } from './load-figure';
import { type Dwelling, voltAmperes } from './parameters';

const ofEach = defineFormula({ symbol: 'S_appliances', text: 'n * S', units: { n: '', S: 'VA' }, result: 'VA' });
const sum = sumOfParts('S', 'VA');
const reduced = defineFormula({ symbol: 'S_appliances', text: 'k * S', units: { k: '%', S: 'VA' }, result: 'VA' });
const vehicle = defineFormula({
  symbol: 'S_vehicle',
  text: 'n * max(S, S_least)',
  units: { n: '', S: 'VA', S_least: 'VA' },
  result: 'VA',
});

/** From this number on, appliances fastened in place count with less (NEC 220.53). */
const manyAppliances = 4;

/** Appliances fastened in place of one dwelling that use the neutral, and those that do not; VA each. */
const neutralOnes = (dwelling: Dwelling): number[] =>
  [...(dwelling.neutral_appliances ?? []), ...(dwelling.dishwasher ? [dwelling.dishwasher] : [])].map(voltAmperes);
const lineOnes = (dwelling: Dwelling): number[] =>
  [...(dwelling.appliances ?? []), ...(dwelling.water_heater ? [dwelling.water_heater] : [])].map(voltAmperes);

/** Nameplate of every appliance fastened in place, all dwellings together, in VA. */
export function appliancesConnected(call: Call, dwelling: Dwelling): number {
  const each = [...lineOnes(dwelling), ...neutralOnes(dwelling)];
  const one = sum(call, each, 'appliances fastened in place');
  return dwelling.units === 1 || one === 0 ? one : ofEach(call, { n: dwelling.units, S: one });
}

/** The same with the factor for four or more, and the part of it that the neutral carries. */
export function applianceDemand(call: Call, dwelling: Dwelling): { readonly total: number; readonly neutral: number } {
  const connected = appliancesConnected(call, dwelling);
  const neutral = neutralOnes(dwelling).reduce((all, one) => all + one, 0) * dwelling.units;
  const number = (lineOnes(dwelling).length + neutralOnes(dwelling).length) * dwelling.units;
  if (number < manyAppliances) {
    return { total: connected, neutral };
  }
  const k = loadFigure(call, 'fastened-in-place appliances', 'k');
  return { total: reduced(call, { k, S: connected }), neutral: (neutral * k) / 100 };
}

/** Vehicle supply equipment of all dwellings in VA: at least what the edition asks for each (NEC 220.57 from 2023). */
export function vehicleLoad(call: Call, dwelling: Dwelling): number {
  const nameplate = voltAmperes(dwelling.ev_charger);
  if (nameplate === 0) {
    return 0;
  }
  const least = tablesOf(call).loadRule('vehicle supply equipment')
    ? loadFigure(call, 'vehicle supply equipment', 'S_least')
    : 0;
  if (least === 0) {
    call.assume(`${tablesOf(call).edition} has no least load for vehicle supply equipment: nameplate taken`);
  }
  return vehicle(call, { n: dwelling.units, S: nameplate, S_least: least });
}
