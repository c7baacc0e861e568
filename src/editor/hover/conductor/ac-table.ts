import type { Conductor } from '../../../functions';
import type { Conduit, Tables } from '../../../tables';
import { captioned, table } from '../../markdown';

const conduits: readonly [Conduit, string][] = [
  ['PVC', 'in PVC'],
  ['aluminum', 'in aluminum'],
  ['steel', 'in steel'],
];

/** AC resistance, reactance and impedance in each kind of raceway; empty for a size that the table does not have. */
export function acTable(tables: Tables, { size, material }: Conductor): string {
  const found = tables.acImpedance(size.text);
  if (!found) {
    return '';
  }
  const { rOhmPerKft, rOhmPerKm, xOhmPerKft, xOhmPerKm, zOhmPerKft, zOhmPerKm } = found.row;
  const x = (conduit: Conduit) => (conduit === 'steel' ? 'steel' : 'nonmagnetic');
  const rows: [string, (conduit: Conduit) => readonly [number | null, number | null]][] = [
    ['R', (conduit) => [rOhmPerKft[material][conduit], rOhmPerKm[material][conduit]]],
    ['X', (conduit) => [xOhmPerKft[x(conduit)], xOhmPerKm[x(conduit)]]],
    ['Z at power factor 0.85', (conduit) => [zOhmPerKft[material][conduit], zOhmPerKm[material][conduit]]],
  ];
  return captioned(
    'AC resistance, reactance and impedance at 75 °C and 60 Hz',
    [found.source],
    table(
      ['', ...conduits.map(([, words]) => words)],
      rows.map(([name, read]) => [name, ...conduits.map(([conduit]) => both(read(conduit)))]),
    ),
  );
}

const both = ([perKft, perKm]: readonly [number | null, number | null]): string =>
  perKft === null ? '–' : `${perKft} Ω/kft${perKm === null ? '' : ` · ${perKm} Ω/km`}`;
