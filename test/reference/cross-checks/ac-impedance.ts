import { acImpedance } from '../../../src/tables/ac-impedance';
import { inUnit } from '../../functions/sheet';
import { about, type Comparison, type CrossCheck, rowsOf, tables, within } from './cross-check';

const metals = ['Cu', 'Al'] as const;
const conduits = ['PVC', 'aluminum', 'steel'] as const;
const cosPhi = 0.85;
const sinPhi = Math.sqrt(1 - cosPhi ** 2);

/** Half a unit of the last digit of a table value: two figures from 1 up, to a thousandth below 0.1. */
const half = (value: number): number => (value >= 1 ? 0.05 : value >= 0.1 ? 0.005 : 0.0005);
const reactanceOf = (row: { xOhmPerKft: { nonmagnetic: number; steel: number } }, conduit: string): number =>
  conduit === 'steel' ? row.xOhmPerKft.steel : row.xOhmPerKft.nonmagnetic;

export const acImpedanceChecks: readonly CrossCheck[] = [
  {
    title: 'effective impedance of Table 9',
    formula: 'Z = R cos φ + X sin φ at 0.85 power factor, from the table’s own R and X',
    source: 'NEC Chapter 9 Table 9, note 2; its three columns are printed apart from each other',
    leeway: 'half a unit of the last printed digit of Z, R and X together',
    tables: ['ac-impedance'],
    functions: ['effective_impedance'],
    compare: () =>
      rowsOf(acImpedance).flatMap((row) =>
        metals.flatMap((metal) =>
          conduits.flatMap((conduit): Comparison[] => {
            const printed = row.zOhmPerKft[metal][conduit];
            const r = row.rOhmPerKft[metal][conduit];
            if (printed === null || r === null) {
              return [];
            }
            const x = reactanceOf(row, conduit);
            const call = `effective_impedance(${row.size} ${metal}, raceway: ${conduit}, power_factor: ${cosPhi})`;
            const room = half(printed) + cosPhi * half(r) + sinPhi * half(x);
            return [within(`${row.size} ${metal} in ${conduit}`, inUnit(call, 'Ω/kft'), printed, room)];
          }),
        ),
      ),
  },
  {
    title: 'AC against DC resistance',
    formula: 'skin effect and the conduit’s losses only raise it',
    source: 'circuit theory; how much, handbook knowledge (memory)',
    leeway: 'down to 0.955 by two printed figures; in PVC up to 1.06, above 500 kcmil 1.2',
    tables: ['ac-impedance', 'conductor-properties'],
    functions: ['ac_resistance'],
    compare: () =>
      tables.sizes.flatMap(({ text, mm2 }): Comparison[] => {
        const row = tables.acImpedance(text)?.row;
        const dc = tables.conductorProperties(text, 'stranded')!.row.ohmPerKft.Cu;
        return row === undefined
          ? []
          : [
              {
                what: text,
                ours: inUnit(`ac_resistance(${text} Cu, raceway: PVC)`, 'Ω/kft') / dc,
                low: 0.955,
                high: mm2 > 260 ? 1.2 : 1.06,
              },
            ];
      }),
  },
  {
    title: 'reactance in steel against other conduit',
    formula: 'X(steel) = 1.25 X(nonmagnetic)',
    source: 'industrial power handbook practice for random lay in conduit (memory)',
    leeway: '2.5 %: two figures printed',
    tables: ['ac-impedance'],
    functions: ['reactance'],
    compare: () =>
      rowsOf(acImpedance).map(({ size }) =>
        about(
          size,
          inUnit(`reactance(${size} Cu, raceway: steel)`, 'Ω/kft') /
            inUnit(`reactance(${size} Cu, raceway: PVC)`, 'Ω/kft'),
          1.25,
          0.025,
        ),
      ),
  },
];
