import { temperatureCoefficients } from '../../../src/tables/temperature-coefficients';
import { inUnit } from '../../functions/sheet';
import { about, type CrossCheck, rowsOf, tables, within } from './cross-check';

const alpha = (metal: 'Cu' | 'Al', at: number): number => tables.temperatureCoefficient(metal, at)!.row.alphaPerC!;

export const temperatureCoefficientChecks: readonly CrossCheck[] = [
  {
    title: 'coefficients at 75 °C are those at 20 °C restated',
    formula: 'α(T) = α(20 °C) / (1 + α(20 °C) (T − 20 °C))',
    source: 'IEC 60028 for copper at 20 °C; NEC Chapter 9 Table 8, note, for both metals at 75 °C',
    leeway: 'half a unit of the last digit, 0.000005/°C',
    tables: ['temperature-coefficients'],
    compare: () =>
      (['Cu', 'Al'] as const).map((metal) =>
        within(metal, alpha(metal, 75), alpha(metal, 20) / (1 + alpha(metal, 20) * 55), 5e-6),
      ),
  },
  {
    title: 'resistivities in both units',
    formula: '1 Ω·cmil/ft = 1.662426e-9 Ω·m',
    source: 'NIST SP 811 (2008), appendix B.8',
    leeway: '1.5 %: two to four figures printed, by different makers',
    tables: ['temperature-coefficients'],
    compare: () =>
      rowsOf(temperatureCoefficients)
        .filter((row) => row.resistivityOhmM !== null && row.resistivityOhmCmilPerFt !== null)
        .map((row) =>
          about(
            `${row.material}, ${row.grade ?? 'plain'}, ${row.referenceC} °C`,
            row.resistivityOhmCmilPerFt! * 1.662426e-9,
            row.resistivityOhmM!,
            0.015,
          ),
        ),
  },
  {
    title: 'resistance at another temperature',
    formula: 'R2 = R1 (234.5 + T2) / (234.5 + T1) for copper, 228.1 for aluminum',
    source: 'IEEE winding-resistance correction, 234.5 °C and 228.1 °C (memory)',
    leeway: '0.1 %: the coefficients have three figures',
    functions: ['resistance_at'],
    tables: ['temperature-coefficients'],
    compare: () =>
      (
        [
          ['Cu', 234.5],
          ['Al', 228.1],
        ] as const
      ).flatMap(([metal, zero]) =>
        [
          [20, 75],
          [75, 20],
          [25, 90],
          [-10, 40],
        ].map(([from, to]) =>
          about(
            `${metal} from ${from} °C to ${to} °C`,
            inUnit(`resistance_at(1 Ω, from: ${from} °C, to: ${to} °C, material: ${metal})`, 'Ω'),
            (zero + to) / (zero + from),
            1e-3,
          ),
        ),
      ),
  },
];
