import assert from 'node:assert/strict';
import { explain } from '../../src/core';
import { valuesFromMemory } from '../../src/tables';

const rowsOf = (title: string) =>
  valuesFromMemory()
    .filter((table) => table.title === title)
    .flatMap((table) => table.rows);

const lines = (): readonly string[] => {
  const explanation = explain('memory');
  assert.ok('page' in explanation);
  return explanation.page.split('\n');
};

describe('the list of values from memory', () => {
  // Counts of the reference data's own account of what was not seen in a reproduction.
  it('has the rows that the reference data counts', () => {
    assert.equal(rowsOf('Raceway areas by type and trade size').length, 47);
    assert.equal(rowsOf('Outside diameter and area of insulated conductors').length, 72);
    assert.equal(rowsOf('Optional demand of multifamily dwellings').length, 23);
  });

  it('has single cells of a row that is otherwise published', () => {
    const rows = rowsOf('Ampacities of insulated conductors');
    assert.deepEqual(
      rows.map(({ key, cells }) => [key, ...cells.flat()]),
      [
        ['1500 kcmil', 'A, Cu, 60 °C', '525'],
        ['2000 kcmil', 'A, Cu, 60 °C', '555'],
      ],
    );
  });

  it('is printed by its name, with values, tables and functions', () => {
    const page = lines();
    assert.equal(page[0], '# Values from memory');
    assert.ok(
      page.includes('- 16 AWG: A, three current-carrying conductors 10; A, two current-carrying conductors 13'),
    );
    assert.ok(page.includes('Table 430.251(B), NEC 2017, NEC 2020, NEC 2023.'));
    assert.ok(page.some((line) => line.startsWith('- `motor_circuit`: NEC 430.32')));
    assert.ok(!page.some((line) => /^- 208, 25: /.test(line)), 'the published 404 A is not from memory');
  });
});
