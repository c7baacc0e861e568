import { Absent, defineFunction, Failure } from '../../language';
import { lineCurrent } from '../rules/line-current';
import { smallestDeviceFor } from '../rules/next-standard-size';
import { unwatched } from '../rules/unwatched';
import { notPhases, notWhole } from '../rules/whole-number';
import { tablesOf } from '../settings';
import { lightingConnected } from './dwelling/lighting';
import { loadFigure } from './dwelling/load-figure';
import { optionalMethod, standardDemands, standardMethod } from './dwelling/method';
import { neutralLoad } from './dwelling/neutral';
import { dwellingParameters } from './dwelling/parameters';

const counted = [
  'units',
  'small_appliance_circuits',
  'laundry_circuits',
  'ranges',
  'dryers',
  'heating_controls',
] as const;

const notInMethod = (part: string) => new Absent(`${part} has no line of its own in this method`);

/** What counts, and what it counts: a count alone would add nothing to the load. */
const countOf = [
  ['ranges', 'range'],
  ['dryers', 'dryer'],
  ['heating_controls', 'space_heating'],
] as const;

export const dwelling_load = defineFunction({
  name: 'dwelling_load',
  summary: 'Load of a dwelling, or of several alike, on its service or feeder, step by step.',
  parameters: dwellingParameters,
  result: {
    record: {
      lighting_connected: { unit: 'VA', meaning: 'general lighting, small-appliance and laundry circuits, connected' },
      lighting_demand: { unit: 'VA', meaning: 'the same after its demand factors' },
      range_demand: { unit: 'VA', meaning: 'demand of ranges' },
      dryer_demand: { unit: 'VA', meaning: 'demand of clothes dryers' },
      appliance_demand: { unit: 'VA', meaning: 'demand of appliances fastened in place' },
      general_connected: { unit: 'VA', meaning: 'optional method: general load, connected' },
      general_demand: { unit: 'VA', meaning: 'optional method: general load after its demand factors' },
      heating_cooling: { unit: 'VA', meaning: 'heating or cooling, whichever counts' },
      vehicle_demand: { unit: 'VA', meaning: 'electric vehicle supply equipment' },
      motor_allowance: { unit: 'VA', meaning: 'what is added for the largest motor' },
      total: { unit: 'VA', meaning: 'calculated load' },
      current: { unit: 'A', meaning: 'calculated load as line current' },
      service_rating: { unit: 'A', meaning: 'smallest standard rating for it; at least 100 A for one dwelling' },
      neutral_load: { unit: 'VA', meaning: 'most that the lines can be out of balance' },
      neutral_current: { unit: 'A', meaning: 'neutral load as current' },
      neutral_ampacity: { unit: 'A', meaning: 'the same with the part over 200 A reduced' },
    },
  },
  formula: 'S_total = sum(k * S)',
  assumptions: [
    'kW counted as kVA',
    'heating and cooling do not run together',
    'several dwellings are alike; house loads such as corridors and lifts are not in it',
    'factors of electric heat, of multifamily dwellings and others are from memory, and say so where they are used',
  ],
  sources: [
    'NEC 220.41, 220.42, 220.45, 220.50 to 220.55, 220.57, 220.60 and 220.61 (2023 numbers)',
    'NEC 220.82 and 220.84',
    'NEC 230.79(C)',
  ],
  examples: [
    {
      text: 'house = dwelling_load(area: 1500 ft², range: 12 kW, dryer: 5.5 kW)\nhouse.total in VA',
      gives: '18,600 VA',
    },
    {
      text: 'house = dwelling_load(area: 1500 ft², range: 12 kW, dryer: 5.5 kW)\nhouse.neutral_current',
      gives: '60.63 A',
    },
    {
      text: 'house = dwelling_load(area: 2800 ft², method: optional, range: 14 kW, water_heater: 3 kW, dryer: 5 kW, dishwasher: 1.5 kW, space_heating: 15 kW, air_conditioning: 29 A * 240 V)\nhouse.current',
      gives: '126.3 A',
    },
  ],
  evaluate: (args, call) => {
    const wrong =
      notPhases(args.phases) ??
      counted.map((name) => notWhole(args[name] ?? 0, name, name.replace(/_/g, ' '))).find((failure) => failure);
    if (wrong) {
      return wrong;
    }
    const unrated = countOf.find(([count, rating]) => call.given(count) && args[count] !== 0 && !args[rating]);
    if (unrated) {
      const [count, rating] = unrated;
      return new Failure(
        `\`${count}\` counts what \`${rating}\` rates, and \`${rating}\` is not given: give it, or take \`${count}\` out.`,
        count,
        'too-few-givens',
      );
    }
    const { voltage, phases, method, units } = args;
    call.assume(`calculation of Article 220 in ${tablesOf(call).edition}, ${method} method; kW counted as kVA`);
    const connected = lightingConnected(call, args);
    const standard = method === 'standard';
    const demands = standardDemands(standard ? call : unwatched(call), args, connected);
    if (demands instanceof Failure) {
      return demands;
    }
    const loads = standard ? standardMethod(call, args, connected, demands) : optionalMethod(call, args, connected);
    if (loads instanceof Failure) {
      return loads;
    }
    const current = lineCurrent(call, {
      power: { value: loads.total, unit: 'VA' },
      voltage,
      phases,
      powerFactor: 1,
      efficiency: 1,
    });
    const least = units === 1 ? loadFigure(call, 'least dwelling service', 'I_least') : 0;
    const service = smallestDeviceFor(tablesOf(call), Math.max(current, least));
    if (!standard) {
      call.assume('neutral by 220.61 with the demands of the standard method');
    }
    const neutral = neutralLoad(call, {
      lighting: demands.lighting,
      ranges: demands.ranges,
      dryers: demands.dryers,
      appliances: demands.appliances.neutral,
      voltage,
      phases,
    });
    return {
      lighting_connected: loads.lightingConnected,
      lighting_demand: loads.lightingDemand ?? notInMethod('lighting'),
      range_demand: loads.ranges ?? notInMethod('cooking'),
      dryer_demand: loads.dryers ?? notInMethod('drying'),
      appliance_demand: loads.appliances ?? notInMethod('an appliance'),
      general_connected: loads.generalConnected ?? new Absent('the standard method has no general load'),
      general_demand: loads.generalDemand ?? new Absent('the standard method has no general load'),
      heating_cooling: loads.climate,
      vehicle_demand: loads.vehicle,
      motor_allowance: loads.motor ?? notInMethod('the largest motor'),
      total: loads.total,
      current,
      service_rating: service?.row.rating ?? new Absent('the load is above the largest standard rating'),
      neutral_load: neutral.load,
      neutral_current: neutral.current,
      neutral_ampacity: neutral.ampacity,
    };
  },
});
