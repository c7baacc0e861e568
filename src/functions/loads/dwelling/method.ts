import { type Call, defineFormula, Failure } from '../../../language';
import { lightingDemand } from '../../rules/lighting-demand';
import { sumOfParts } from '../../rules/sum-of-parts';
import { tablesOf } from '../../settings';
import { applianceDemand, appliancesConnected, vehicleLoad } from './appliances';
import { climateOptional, climateWhole } from './climate';
import { dryersDemand, type LikeAppliances, rangesDemand } from './cooking-and-drying';
import { loadFigure } from './load-figure';
import { type Dwelling, voltAmperes } from './parameters';

const nameplates = defineFormula({ symbol: 'S_nameplate', text: 'n * S', units: { n: '', S: 'VA' }, result: 'VA' });
const allDwellings = defineFormula({ symbol: 'S_climate', text: 'n * S', units: { n: '', S: 'VA' }, result: 'VA' });
const addedForMotor = defineFormula({
  symbol: 'S_motor',
  text: '(k - 100 %) * S',
  units: { k: '%', S: 'VA' },
  result: 'VA',
});
const generalDemand = defineFormula({
  symbol: 'S_general',
  text: 'k_first * min(S, 10 kVA) + k_rest * max(S - 10 kVA, 0 kVA)',
  units: { k_first: '%', S: 'VA', k_rest: '%' },
  result: 'VA',
});
const family = defineFormula({ symbol: 'S_total', text: 'k * S', units: { k: '%', S: 'VA' }, result: 'VA' });
const connectedSum = sumOfParts('S', 'VA');
const totalSum = sumOfParts('S_total', 'VA');

/** What a method comes to, in VA; `undefined` for a part that the method does not have. */
export interface DwellingLoads {
  readonly lightingConnected: number;
  readonly lightingDemand?: number;
  readonly ranges?: number;
  readonly dryers?: number;
  readonly appliances?: number;
  readonly generalConnected?: number;
  readonly generalDemand?: number;
  readonly climate: number;
  readonly vehicle: number;
  readonly motor?: number;
  readonly total: number;
}

/** Demands that the standard method works out and that the neutral needs in any case. */
export interface StandardDemands {
  readonly lighting: number;
  readonly ranges: number;
  readonly dryers: number;
  readonly appliances: { readonly total: number; readonly neutral: number };
}

const rangesOf = ({ range, ranges, units, phases }: Dwelling): LikeAppliances => ({
  count: range ? (ranges ?? units) : 0,
  rating: voltAmperes(range),
  phases,
});
const dryersOf = ({ dryer, dryers, units, phases }: Dwelling): LikeAppliances => ({
  count: dryer ? (dryers ?? units) : 0,
  rating: voltAmperes(dryer),
  phases,
});

/** Demands of lighting, cooking, drying and appliances by part III of Article 220. */
export function standardDemands(call: Call, dwelling: Dwelling, connected: number): StandardDemands | Failure {
  const lighting = lightingDemand(call, connected, 'dwelling');
  const ranges = rangesDemand(call, rangesOf(dwelling));
  const dryers = ranges instanceof Failure ? ranges : dryersDemand(call, dryersOf(dwelling));
  if (ranges instanceof Failure || dryers instanceof Failure) {
    return dryers as Failure;
  }
  return { lighting, ranges, dryers, appliances: applianceDemand(call, dwelling) };
}

const ofAll = (call: Call, one: number, units: number): number =>
  units === 1 || one === 0 ? one : allDwellings(call, { n: units, S: one });

const present = (parts: readonly number[]): readonly number[] => parts.filter((part) => part !== 0);

/** The standard calculation (NEC Article 220, part III). */
export function standardMethod(
  call: Call,
  dwelling: Dwelling,
  connected: number,
  demands: StandardDemands,
): DwellingLoads {
  const climate = ofAll(call, climateWhole(call, dwelling), dwelling.units);
  const vehicle = vehicleLoad(call, dwelling);
  const largest = voltAmperes(dwelling.largest_motor);
  const motor = largest > 0 ? addedForMotor(call, { k: loadFigure(call, 'largest motor', 'k'), S: largest }) : 0;
  const { lighting, ranges, dryers, appliances } = demands;
  const parts = [lighting, ranges, dryers, appliances.total, climate, vehicle, motor];
  return {
    lightingConnected: connected,
    lightingDemand: lighting,
    ranges,
    dryers,
    appliances: appliances.total,
    climate,
    vehicle,
    motor,
    total: totalSum(call, present(parts), 'all parts'),
  };
}

/** Connected load of everything but heating, cooling and vehicles, in VA. */
function generalConnected(call: Call, dwelling: Dwelling, connected: number): number {
  const plates = [rangesOf(dwelling), dryersOf(dwelling)].map(({ count, rating }) =>
    count > 1 ? nameplates(call, { n: count, S: rating }) : count * rating,
  );
  return connectedSum(call, present([connected, ...plates, appliancesConnected(call, dwelling)]), 'general load');
}

/** The optional calculation: 220.82 for one dwelling, 220.84 for three or more. */
export function optionalMethod(call: Call, dwelling: Dwelling, connected: number): DwellingLoads | Failure {
  const { units } = dwelling;
  const general = generalConnected(call, dwelling, connected);
  const vehicle = vehicleLoad(call, dwelling);
  if (units === 1) {
    const k_first = loadFigure(call, 'optional method, first 10 kVA', 'k_first');
    const k_rest = loadFigure(call, 'optional method, over 10 kVA', 'k_rest');
    const demand = generalDemand(call, { k_first, S: general, k_rest });
    const climate = climateOptional(call, dwelling);
    if (vehicle > 0) {
      call.assume('vehicle supply equipment counted whole, outside the general load');
    }
    const total = totalSum(call, present([demand, climate, vehicle]), 'general, heating or cooling, vehicles');
    return { lightingConnected: connected, generalConnected: general, generalDemand: demand, climate, vehicle, total };
  }
  const found = tablesOf(call).multifamilyDemand(units);
  if (!found) {
    return new Failure(
      'The optional calculation is for one dwelling or for three and more: for two, take the smaller of the standard one and of the optional one for three (220.85).',
      'units',
      'not-covered',
    );
  }
  call.assume('each dwelling cooks by electricity and has electric heat or cooling; house loads are not in it');
  const climate = ofAll(call, climateWhole(call, dwelling), units);
  const all = connectedSum(call, present([general, climate, vehicle]), 'connected load');
  call.table({ symbol: 'k', value: found.row.percent, unit: '%', source: found.source, row: found.shown });
  const total = family(call, { k: found.row.percent, S: all });
  return { lightingConnected: connected, generalConnected: all, generalDemand: total, climate, vehicle, total };
}
