import { dwellingServices } from '../../../src/tables/dwelling-services';
import { inUnit } from '../../functions/sheet';
import { about, type CrossCheck, neverFalls, rowsOf, tables } from './cross-check';

const counts = (last: number): number[] => Array.from({ length: last }, (_, i) => i + 1);
const ampacity75 = (size: string, metal: 'Cu' | 'Al'): number => tables.ampacity(size)!.row.amperes[metal][75]!;

/** The next smaller size of the ampacity table. */
const below = (size: string): string | undefined =>
  tables.sizes[tables.sizes.findIndex(({ text }) => text === size) - 1]?.text;

export const dwellingAndDemandChecks: readonly CrossCheck[] = [
  {
    title: 'dwelling services against 83 % of their rating',
    formula: 'I75(next smaller size) < 0.83 I_n ≤ I75(size)',
    source: 'NEC 310.12 and Table 310.16, 75 °C column',
    leeway: 'none: the smallest size that reaches it',
    tables: ['dwelling-services', 'ampacity'],
    compare: () =>
      rowsOf(dwellingServices).flatMap((row) =>
        (['Cu', 'Al'] as const).map((metal) => ({
          what: `${row.rating} A: ${row[metal]} ${metal}`,
          ours: 0.83 * row.rating,
          low: ampacity75(below(row[metal])!, metal) * (1 + 1e-9),
          high: ampacity75(row[metal], metal),
        })),
      ),
  },
  {
    title: 'more ranges never ask for less',
    formula: 'demand does not fall as ranges are added',
    source: 'what demand factors are: diversity takes from each, not from all',
    leeway: 'none',
    tables: ['range-demand'],
    functions: ['range_demand'],
    compare: () => neverFalls(counts(80).map((n) => [`${n} of 12 kW`, inUnit(`range_demand(${n}, 12 kW)`, 'kW')])),
  },
  {
    title: 'range demand by formula',
    formula: '15 kW + 1 kW for each of 26 to 40 ranges, 25 kW + 0.75 kW for each above 40',
    source: 'NEC Table 220.55, column C (memory)',
    leeway: 'last bits of a float',
    tables: ['range-demand'],
    functions: ['range_demand'],
    compare: () =>
      [26, 30, 40, 41, 50, 61, 100].map((n) =>
        about(`${n} ranges`, inUnit(`range_demand(${n}, 12 kW)`, 'kW'), n <= 40 ? 15 + n : 25 + 0.75 * n, 1e-12),
      ),
  },
  {
    title: 'ranges above 12 kW',
    formula: '5 % for each kW, or major fraction of one, above 12 kW',
    source: 'NEC Table 220.55, note 1',
    leeway: 'last bits of a float',
    functions: ['range_demand'],
    compare: () =>
      [12.4, 12.5, 13, 15.4, 16, 20, 27].map((kilowatts) =>
        about(
          `one of ${kilowatts} kW`,
          inUnit(`range_demand(1, ${kilowatts} kW)`, 'kW'),
          8 * (1 + 0.05 * Math.floor(kilowatts - 12 + 0.5)),
          1e-12,
        ),
      ),
  },
  {
    title: 'more dryers never ask for less',
    formula: 'demand does not fall as dryers are added',
    source: 'what demand factors are',
    leeway: 'none; to 11 dryers, where whole per cents step down',
    tables: ['dryer-demand'],
    functions: ['dryer_demand'],
    compare: () => neverFalls(counts(11).map((n) => [`${n} of 5 kW`, inUnit(`dryer_demand(${n}, 5 kW)`, 'kW')])),
  },
  {
    title: 'lighting demand of dwellings',
    formula: '3000 VA + 35 % to 120 kVA + 25 % above',
    source: 'NEC Table 220.45, 220.42 before 2023',
    leeway: 'last bits of a float',
    tables: ['lighting-demand'],
    functions: ['lighting_demand'],
    compare: () =>
      [1000, 3000, 9000, 120_000, 250_000].map((load) =>
        about(
          `${load} VA`,
          inUnit(`lighting_demand(${load} VA)`, 'VA'),
          Math.min(load, 3000) +
            0.35 * Math.max(0, Math.min(load, 120_000) - 3000) +
            0.25 * Math.max(0, load - 120_000),
          1e-12,
        ),
      ),
  },
];
