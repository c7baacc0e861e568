import assert from 'node:assert/strict';
import { rowOrder } from '../../src/renderer/row-order';

const sorted = (cells: readonly string[], order: 'ascending' | 'descending' | 'none' = 'ascending') =>
  rowOrder(cells, order).map((row) => cells[row]);

describe('the order of a schedule’s rows', () => {
  it('is by size for numbers, as they are written', () => {
    assert.deepEqual(sorted(['9.2', '1,440', '−3', '20 ± 1', '–']), ['−3', '9.2', '20 ± 1', '1,440', '–']);
  });

  it('is from thin to thick for conductors', () => {
    const sizes = ['250 kcmil Cu', '12 AWG Cu THHN', '4/0 AWG Al', '10 AWG Cu', '1/0 AWG Cu'];
    assert.deepEqual(sorted(sizes), ['12 AWG Cu THHN', '10 AWG Cu', '1/0 AWG Cu', '4/0 AWG Al', '250 kcmil Cu']);
  });

  it('is by letters for texts, numbers in them by size', () => {
    assert.deepEqual(sorted(['P10', 'p2', 'A1']), ['A1', 'p2', 'P10']);
  });

  it('turns round, but for rows without a value, which stay last, and equal ones, which keep the sheet’s order', () => {
    assert.deepEqual(rowOrder(['2', '', '1', '2'], 'descending'), [0, 3, 2, 1]);
  });

  it('is the sheet’s own again in the end', () => {
    assert.deepEqual(sorted(['2', '3', '1'], 'none'), ['2', '3', '1']);
  });
});
