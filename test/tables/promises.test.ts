import assert from 'node:assert/strict';
import { readTableFile } from '../../src/tables';
import { subjects } from '../../src/tables/subjects';
import type { TableFile } from '../../src/tables/table-file';

/** A shipped file with one cell changed, as a workspace would bring it. */
function withSlip(file: TableFile, key: readonly string[], column: string, wrong: string): string {
  const { path: _, ...rest } = file;
  const rows = file.rows.map((row) =>
    key.every((cell) => row.includes(cell)) ? row.map((cell, i) => (file.columns[i] === column ? wrong : cell)) : row,
  );
  assert.notDeepEqual(rows, file.rows, 'the slip is made somewhere');
  return JSON.stringify({ ...rest, rows });
}

/** Likely slips: swapped digits, a lost point, a neighbour's value. */
const slips: readonly (readonly [subject: string, key: readonly string[], column: string, wrong: string])[] = [
  ['conductor-properties', ['12 AWG', 'stranded'], 'ohmPerKft.Cu', '1.89'],
  ['conductor-properties', ['500 kcmil'], 'ohmPerKm.Al', '0.1319'],
  ['conductor-properties', ['6 AWG'], 'areaCmil', '26420'],
  ['wire-table', ['22 AWG'], 'diameterMils', '25.53'],
  ['ampacity', ['3 AWG'], 'amperes.Cu.75', '120'],
  ['ampacity', ['8 AWG'], 'amperes.Al.60', '45'],
  ['ambient-correction', ['45'], 'factor.75', '0.28'],
  ['bundling', ['10', '20'], 'percent', '75'],
  ['bundling', ['21', '30'], 'min', '22'],
  ['overcurrent-ratings', ['35'], 'appliesTo', 'breakers'],
  ['equipment-grounding', ['100'], 'Cu', '12 AWG'],
  ['insulation', ['THHN'], 'columnDryC', '80'],
  ['temperature-coefficients', ['annealed, 100 % IACS'], 'resistivityOhmCmilPerFt', '10.731'],
  ['ac-impedance', ['3/0 AWG'], 'rOhmPerKft.Cu.PVC', '0.77'],
  ['ac-impedance', ['4 AWG'], 'xOhmPerKft.steel', '0.040'],
  ['raceway-areas', ['EMT', '3/4'], 'areaIn2.overTwoWires', '0.231'],
  ['raceway-areas', ['EMT', '1'], 'internalDiameterIn', '1.409'],
  ['insulated-areas', ['THHN THWN THWN-2', '12 AWG'], 'areaIn2', '0.0313'],
  ['motor-currents', ['three-phase', '460', '10'], 'amperes', '41'],
  ['motor-currents', ['dc', '120', '1'], 'amperes', '0.95'],
  ['grounding-electrode', ['over 3/0 AWG to 350 kcmil'], 'Cu', '6 AWG'],
  ['supply-bonding', ['over 600 kcmil to 1100 kcmil'], 'toCmil.Cu', '110000'],
  ['dwelling-services', ['200'], 'Al', '1/0 AWG'],
  ['iec-conductors', ['2.5 mm²', 'Cu', '2'], 'maxOhmPerKm', '4.71'],
  ['transformer-impedance', ['15 kVA'], 'percentX', '0.3'],
  ['range-demand', ['8'], 'kilowattsC', '32'],
  ['dryer-demand', ['12', '23'], 'percent', '74'],
  ['lighting-demand', ['dwelling', '3000', '120000'], 'overVA', '300'],
  ['motor-protection', ['branch device ceiling', 'design B energy-efficient'], 'percent', '1000'],
];

describe('declared checks', () => {
  for (const [id, key, column, wrong] of slips) {
    it(`of ${id} catch ${wrong} as ${column} of ${key.join(', ')}`, async () => {
      const file = subjects
        .find((subject) => subject.id === id)!
        .files.filter((candidate) => candidate.rows.some((row) => key.every((cell) => row.includes(cell))))
        .at(-1)!;
      const result = await readTableFile(withSlip(file, key, column, wrong), 'slip.json');
      assert.ok('diagnostics' in result, 'the slip passed');
      assert.ok(result.diagnostics.every(({ message }) => message.length > 20));
    });
  }
});
