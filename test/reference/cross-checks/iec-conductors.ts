import { parseSize } from '../../../src/tables';
import { type IecConductorRow, iecConductors } from '../../../src/tables/iec-conductors';
import { type CrossCheck, neverFalls, rowsOf } from './cross-check';

const area = (row: IecConductorRow): number => parseSize(row.size)!.mm2;
const what = (row: IecConductorRow): string => `${row.size} ${row.material}, class ${row.class}`;
const groupOf = (row: IecConductorRow): string => `${row.material} ${row.class}`;
const above = (row: IecConductorRow, rho: number): number => (row.maxOhmPerKm * area(row)) / (1000 * rho);
const fixed = (row: IecConductorRow): boolean => row.class !== '5';

export const iecConductorChecks: readonly CrossCheck[] = [
  {
    title: 'limits of plain copper, fixed conductors',
    formula: 'R = L / (58 A), A the nominal area',
    source: 'annealed copper, 1/58 Ω·mm²/m at 20 °C (IEC 60028)',
    leeway: '2 % to 13 % above: the limit covers lay and tolerance, and 50 mm² has nearer 47 mm² of metal',
    tables: ['iec-conductors'],
    compare: () =>
      rowsOf(iecConductors)
        .filter((row) => row.material === 'Cu' && fixed(row))
        .map((row) => ({ what: what(row), ours: above(row, 1 / 58), low: 1.02, high: 1.13 })),
  },
  {
    title: 'limits of aluminum',
    formula: 'R = ρ L / A, A the nominal area',
    source: '61 % IACS aluminum, 0.028264 Ω·mm²/m at 20 °C',
    leeway: '2 % to 14 % above: the limit covers lay and tolerance, and 50 mm² has nearer 47 mm² of metal',
    tables: ['iec-conductors'],
    compare: () =>
      rowsOf(iecConductors)
        .filter((row) => row.material === 'Al')
        .map((row) => ({ what: what(row), ours: above(row, 0.028264), low: 1.02, high: 1.14 })),
  },
  {
    title: 'limits of flexible and of tinned copper',
    formula: 'R = L / (58 A), A the nominal area',
    source: 'annealed copper, 1/58 Ω·mm²/m at 20 °C (IEC 60028)',
    leeway: '2 % to 22 % above: finer strands, longer lay, tinning, which adds little to thick strands',
    tables: ['iec-conductors'],
    compare: () =>
      rowsOf(iecConductors)
        .filter((row) => row.material === 'coated Cu' || (row.material === 'Cu' && !fixed(row)))
        .map((row) => ({ what: what(row), ours: above(row, 1 / 58), low: 1.02, high: 1.22 })),
  },
  {
    title: 'limits fall as the area grows',
    formula: 'R falls with A',
    source: 'Ohm’s law',
    leeway: 'none',
    tables: ['iec-conductors'],
    compare: () => {
      const rows = rowsOf(iecConductors);
      const groups = new Set(rows.map(groupOf));
      return [...groups].flatMap((group) =>
        neverFalls(rows.filter((row) => groupOf(row) === group).map((row) => [what(row), -row.maxOhmPerKm] as const)),
      );
    },
  },
];
