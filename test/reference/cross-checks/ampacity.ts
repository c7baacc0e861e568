import type { TemperatureColumn } from '../../../src/tables';
import { ambientCorrection } from '../../../src/tables/ambient-correction';
import { inUnit } from '../../functions/sheet';
import { about, type Comparison, type CrossCheck, rowsOf, tables, within } from './cross-check';

const columns: readonly TemperatureColumn[] = [60, 75, 90];

/** Sizes whose ampacities are not rounded to preferred ratings: from 2 AWG up. */
const sizes = tables.sizes.filter(({ mm2 }) => mm2 >= 33);

const insulationOf = { 60: 'TW', 75: 'THW', 90: 'THHN' } as const;

export const ampacityChecks: readonly CrossCheck[] = [
  {
    title: 'ambient correction factors',
    formula: 'k = √((Tc − Ta) / (Tc − 30 °C))',
    source: 'heat balance; NEC 310.15, equation for other ambient temperatures',
    leeway: '0.006: two figures printed, a few cells rounded the other way',
    tables: ['ambient-correction'],
    compare: () =>
      rowsOf(ambientCorrection).flatMap(({ maxC, factor }) =>
        columns.flatMap((conductor) => {
          const printed = factor[conductor];
          return printed === null
            ? []
            : [
                within(
                  `${conductor} °C at ${maxC} °C`,
                  printed,
                  Math.sqrt((conductor - maxC) / (conductor - 30)),
                  0.006,
                ),
              ];
        }),
      ),
  },
  {
    title: 'no factor where the conductor would be as hot as the air',
    formula: 'Ta ≥ Tc − 5 °C has no factor',
    source: 'heat balance',
    leeway: 'none: a cell is empty or not',
    tables: ['ambient-correction'],
    compare: () =>
      rowsOf(ambientCorrection).flatMap(({ maxC, factor }) =>
        columns
          .filter((conductor) => factor[conductor] === null)
          .map((conductor) => ({
            what: `${conductor} °C`,
            ours: maxC,
            low: conductor - 5,
            high: Number.POSITIVE_INFINITY,
          })),
      ),
  },
  {
    title: 'ampacity in a warm room',
    formula: 'I(Ta) = I(30 °C) √((Tc − Ta) / (Tc − 30 °C))',
    source: 'heat balance; NEC 310.15, equation for other ambient temperatures',
    leeway: '2 %: two figures of the factor',
    tables: ['ampacity', 'ambient-correction'],
    functions: ['ampacity'],
    compare: () =>
      columns.flatMap((conductor) =>
        [35, 40, 45, 50].map((ambient) => {
          const call = (at: number) =>
            inUnit(`ampacity(1/0 AWG Cu ${insulationOf[conductor]}, ambient: ${at} °C, terminals: 90 °C)`, 'A');
          return about(
            `1/0 AWG, ${conductor} °C insulation, at ${ambient} °C`,
            call(ambient),
            call(30) * Math.sqrt((conductor - ambient) / (conductor - 30)),
            0.02,
          );
        }),
      ),
  },
  {
    title: 'hotter columns carry what the hotter conductor may',
    formula: 'I75 / I60 = √(45/30 · (234.5 + 60) / (234.5 + 75))',
    source: 'heat balance I² R = k ΔT, with copper’s resistance at each temperature (IEC 60028)',
    leeway: '5 %: rounded to 5 A',
    tables: ['ampacity'],
    compare: () =>
      sizes.flatMap(({ text }): Comparison[] => {
        const { Cu } = tables.ampacity(text)!.row.amperes;
        const ratio = Math.sqrt((45 / 30) * ((234.5 + 60) / (234.5 + 75)));
        return Cu[60] === null || Cu[75] === null ? [] : [about(text, Cu[75] / Cu[60], ratio, 0.05)];
      }),
  },
  {
    title: 'aluminum against copper',
    formula: 'I(Al) / I(Cu) = √0.61',
    source: '61 % IACS conductivity (IEC 60028 and aluminum standards)',
    leeway: '0.04, to 500 kcmil: rounded to 5 A; above that, skin effect evens them out',
    tables: ['ampacity'],
    compare: () =>
      sizes.flatMap(({ text, mm2 }): Comparison[] => {
        const { Cu, Al } = tables.ampacity(text)!.row.amperes;
        return mm2 > 260 || Cu[75] === null || Al[75] === null
          ? []
          : [within(text, Al[75] / Cu[75], Math.sqrt(0.61), 0.04)];
      }),
  },
  {
    title: 'small conductors and their usual breakers',
    formula: '14, 12 and 10 AWG copper on 15, 20 and 30 A',
    source: 'common practice, no source',
    leeway: 'none',
    tables: ['ampacity', 'small-conductors'],
    compare: () =>
      (
        [
          ['14 AWG', 15],
          ['12 AWG', 20],
          ['10 AWG', 30],
        ] as const
      ).flatMap(([size, rating]) => [
        within(`${size}, 60 °C column`, tables.ampacity(size)!.row.amperes.Cu[60]!, rating, 0),
        within(`${size}, largest device`, tables.smallConductorLimit(size, 'Cu')!.row.maxOcpd, rating, 0),
      ]),
  },
];
