import { conductorProperties } from '../../../src/tables/conductor-properties';
import { inUnit } from '../../functions/sheet';
import { about, type CrossCheck, mm2PerCmil, rowsOf, tables, within } from './cross-check';

/** Resistivity at 20 °C in Ω·mm²/m and its temperature coefficient there. */
const metals = {
  Cu: { rho: 1 / 58, alpha: 0.00393 },
  Al: { rho: 0.028264, alpha: 0.00403 },
} as const;
type Metal = keyof typeof metals;

/** Resistance of a straight metal of that area, Ω/kft. */
const straight = (metal: Metal, areaCmil: number, celsius: number): number =>
  (metals[metal].rho * (1 + metals[metal].alpha * (celsius - 20)) * 304.8) / (areaCmil * mm2PerCmil);

/** Strands lie in a helix, about 2 % longer than the conductor. */
const lay = (stranding: 'solid' | 'stranded'): number => (stranding === 'stranded' ? 1.02 : 1);

const copper = 'resistivity 1/58 Ω·mm²/m and 0.00393/°C of annealed copper at 20 °C (IEC 60028)';
const aluminum =
  '61 % IACS aluminum, 0.028264 Ω·mm²/m and 0.00403/°C at 20 °C (IEC-based teaching page; industrial power handbook)';
const strands = 'strands 2 % longer for their lay (ASTM B8, memory)';

export const conductorResistanceChecks: readonly CrossCheck[] = [
  {
    title: 'DC resistance of Table 8',
    formula: 'R = ρ (1 + α (75 °C − 20 °C)) L / A',
    source: `${copper}; ${aluminum}; ${strands}`,
    leeway: '1.2 %: three figures printed, areas of small sizes rounded to three figures, the lay',
    tables: ['conductor-properties'],
    compare: () =>
      rowsOf(conductorProperties).flatMap((row) =>
        (['Cu', 'Al'] as const).map((metal) =>
          about(
            `${row.size} ${metal} ${row.stranding}`,
            row.ohmPerKft[metal],
            lay(row.stranding) * straight(metal, row.areaCmil, 75),
            0.012,
          ),
        ),
      ),
  },
  {
    title: 'solid copper of Table 8 against the wire table',
    formula: 'R75 = R20 (1 + 0.00393 (75 °C − 20 °C))',
    source: 'annealed-copper wire table (NBS Circular 31), IEC 60028',
    leeway: '0.6 %: three figures printed, areas rounded',
    tables: ['conductor-properties', 'wire-table'],
    compare: () =>
      ['18 AWG', '16 AWG', '14 AWG', '12 AWG', '10 AWG', '8 AWG'].map((size) =>
        about(
          size,
          tables.conductorProperties(size, 'solid')!.row.ohmPerKft.Cu,
          tables.wireTable(size)!.row.ohmPerKft * (1 + 0.00393 * 55),
          0.006,
        ),
      ),
  },
  {
    title: 'coated copper of Table 8',
    formula: 'tinning raises the resistance, most where strands are thin',
    source: 'ASTM B33 conductivities, 93 % to 100 % (memory)',
    leeway: '2 % to 7 % above plain copper',
    tables: ['conductor-properties'],
    compare: () =>
      rowsOf(conductorProperties).map((row) => ({
        what: `${row.size} ${row.stranding}`,
        ours: row.ohmPerKft.coatedCu / row.ohmPerKft.Cu,
        low: 1.02,
        high: 1.07,
      })),
  },
  {
    title: 'diameters and areas of Table 8',
    formula: 'A = π d² / 4',
    source: 'geometry',
    leeway:
      'half a unit of the last digit of diameter and area, three decimals each; 12 AWG stranded is printed 0.006 in² where its 0.092 in make 0.0066',
    tables: ['conductor-properties'],
    compare: () =>
      rowsOf(conductorProperties).map((row) =>
        within(
          `${row.size} ${row.stranding}`,
          row.overallAreaIn2,
          (Math.PI / 4) * row.overallDiameterIn ** 2,
          0.0006 + (Math.PI / 2) * row.overallDiameterIn * 0.0005,
        ),
      ),
  },
  {
    title: 'resistance of a length, at several temperatures',
    formula: 'R = ρ (1 + α (T − 20 °C)) L / A',
    source: `${copper}; ${aluminum}; ${strands}`,
    leeway: '1.5 %: that of Table 8, and its coefficients of three figures away from 75 °C',
    tables: ['conductor-properties', 'temperature-coefficients'],
    functions: ['resistance', 'resistance_per_length'],
    compare: () =>
      ['14 AWG', '10 AWG', '4 AWG', '1/0 AWG', '250 kcmil', '1000 kcmil'].flatMap((size) =>
        (['Cu', 'Al'] as const).flatMap((metal) =>
          [-10, 20, 60, 90].map((celsius) =>
            about(
              `85 ft of ${size} ${metal} at ${celsius} °C`,
              inUnit(`resistance(${size} ${metal} stranded, 85 ft, temperature: ${celsius} °C)`, 'Ω'),
              0.085 *
                lay('stranded') *
                straight(metal, tables.conductorProperties(size, 'stranded')!.row.areaCmil, celsius),
              0.015,
            ),
          ),
        ),
      ),
  },
  {
    title: 'length from a resistance',
    formula: 'L = R A / (ρ (1 + α (T − 20 °C)))',
    source: copper,
    leeway: '0.6 %: the wire table prints four figures of 20 °C, Table 8 three of 75 °C',
    tables: ['wire-table'],
    functions: ['conductor_length'],
    compare: () =>
      ['18 AWG', '14 AWG', '12 AWG', '10 AWG', '8 AWG'].flatMap((size) =>
        [0, 20, 35].map((celsius) =>
          about(
            `0.4 Ω of ${size} solid at ${celsius} °C`,
            inUnit(`conductor_length(0.4 Ω, ${size} Cu solid, temperature: ${celsius} °C, leads: 0 Ω)`, 'ft'),
            (0.4 / straight('Cu', tables.wireTable(size)!.row.areaCmil, celsius)) * 1000,
            0.006,
          ),
        ),
      ),
  },
];
