import assert from 'node:assert/strict';
import { toText } from '../../src/display';
import { shownBlocks } from '../../src/editor';
import { createProgram } from '../../src/language';
import { createLibrary } from '../../src/library';

function shown(...rows: string[]): string[] {
  const library = createLibrary();
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'c', text: `panel = schedule\n  | phase | load |\n  | --- | --- |\n  ${rows.join('\n  ')}` }]);
  return toText(program.results('c').flatMap((result) => shownBlocks(result))).split('\n');
}

describe('what a panel schedule shows', () => {
  it('is its table, then the loads of its phases and how unequal they are', () => {
    // Mean 2 kVA; C lies 1 kVA above it: 50 % by NEMA MG 1.
    assert.equal(
      shown('| A | 1.5 kVA |', '| B | 1.5 kVA |', '| C | 3 kVA |').at(-1),
      '  load by phase: A 1.5 kVA, B 1.5 kVA, C 3 kVA; unbalance 50 %, C lies furthest above the mean of 2 kVA',
    );
  });

  it('tells of two legs which carries more, and what was shared or left out', () => {
    assert.equal(
      shown('| A | 1 kVA |', '| AB | 3 kVA |', '| B | 1.5 kVA |', '| "N" | 1 kVA |').at(-1),
      '  load by phase: A 2.5 kVA, B 3 kVA; B carries 0.5 kVA more than A; what lies across several is shared equally ' +
        'among them; 1 row with a load left out: on no phase',
    );
    assert.match(shown('| A | 1 kVA |', '| B | 1 kVA |').at(-1)!, /; all carry the same$/);
  });

  it('is its table alone where there are no phases', () => {
    assert.equal(
      shown('| "x" | 1 kVA |', '| "y" | 1 kVA |').some((line) => line.includes(' by ')),
      false,
    );
  });
});
