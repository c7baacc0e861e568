import { insulatedAreas } from '../../../src/tables/insulated-areas';
import { racewayAreas } from '../../../src/tables/raceway-areas';
import { type Comparison, type CrossCheck, neverFalls, rowsOf, tables, within } from './cross-check';

const circle = (d: number): number => (Math.PI / 4) * d ** 2;

/** What half a thousandth of an inch of the diameter makes of the area. */
const byDiameter = (d: number): number => (Math.PI / 2) * d * 0.0005;

const shares = { oneWire: 0.53, twoWires: 0.31, overTwoWires: 0.4, nipple: 0.6 } as const;

export const racewayChecks: readonly CrossCheck[] = [
  {
    title: 'raceway areas of Table 4',
    formula: 'A = π d² / 4',
    source: 'geometry',
    leeway: 'half a unit of the last printed digit of diameter and area, three decimals each',
    tables: ['raceway-areas'],
    compare: () =>
      rowsOf(racewayAreas).map(({ type, tradeSize, internalDiameterIn: d, areaIn2 }) =>
        within(`${type} ${tradeSize}`, areaIn2.total, circle(d), 0.0005 + byDiameter(d)),
      ),
  },
  {
    title: 'usable areas of Table 4',
    formula: 'A(n) = 53 %, 31 %, 40 % or 60 % of π d² / 4',
    source: 'NEC Chapter 9 Table 1 and Note 4; geometry',
    leeway: 'half a unit of the last printed digit of diameter and area',
    tables: ['raceway-areas', 'raceway-fill'],
    compare: () =>
      rowsOf(racewayAreas).flatMap(({ type, tradeSize, internalDiameterIn: d, areaIn2 }) =>
        (Object.keys(shares) as (keyof typeof shares)[]).map((wires) =>
          within(
            `${type} ${tradeSize}, ${wires}`,
            areaIn2[wires],
            shares[wires] * circle(d),
            0.0005 + shares[wires] * (byDiameter(d) + 0.0005),
          ),
        ),
      ),
  },
  {
    title: 'conductor areas of Table 5',
    formula: 'A = π d² / 4',
    source: 'geometry',
    leeway: 'half a unit of the last printed digit: three decimals of the diameter, four of the area',
    tables: ['insulated-areas'],
    compare: () =>
      rowsOf(insulatedAreas).map(({ types, size, diameterIn, areaIn2 }) =>
        within(`${size} ${types}`, areaIn2, circle(diameterIn), 0.00005 + byDiameter(diameterIn)),
      ),
  },
  {
    title: 'insulated conductors against bare ones',
    formula: 'an insulated conductor is thicker than its metal',
    source: 'geometry; NEC Chapter 9 Table 8 for the metal',
    leeway: 'none below; 0.36 in above',
    tables: ['insulated-areas', 'conductor-properties'],
    compare: () =>
      rowsOf(insulatedAreas).flatMap(({ types, size, diameterIn }): Comparison[] => {
        const bare = tables.conductorProperties(size, 'stranded')?.row.overallDiameterIn;
        return bare === undefined ? [] : [{ what: `${size} ${types}`, ours: diameterIn, low: bare, high: bare + 0.36 }];
      }),
  },
  {
    title: 'larger trade sizes hold more',
    formula: 'areas rise with the metric designator',
    source: 'common practice, no source',
    leeway: 'none',
    tables: ['raceway-areas'],
    compare: () =>
      tables
        .racewayTypes()
        .flatMap((type) =>
          neverFalls(tables.raceways(type).map(({ row }) => [`${type} ${row.tradeSize}`, row.areaIn2.total] as const)),
        ),
  },
];
