import assert from 'node:assert/strict';
import { createProgram, Node } from '../../../src/language';
import { shown } from '../run-cells';
import { smallLibrary } from '../small-library';

const start = [
  { id: 'a', text: 'a = 2 V' },
  { id: 'b', text: 'b = a * 3' },
  { id: 'c', text: 'c = 5 A' },
];

function started() {
  const program = createProgram(smallLibrary);
  program.update(start);
  return program;
}

describe('an edit', () => {
  it('does again only the cell edited and what hangs on it', () => {
    const program = started();
    const tree = program.tree('c');
    const [untouched] = program.results('c');
    const changed = program.update([{ id: 'a', text: 'a = 4 V' }, ...start.slice(1)]);
    assert.deepEqual([...changed].sort(), ['a', 'b']);
    assert.equal(shown(program.results('b')[0].value), '12 V');
    assert.equal(program.tree('c'), tree);
    assert.equal(program.results('c')[0], untouched);
  });

  it('to nothing new changes nothing', () => {
    assert.deepEqual([...started().update(start)], []);
  });

  it('that takes a cell away leaves its dependants with a report', () => {
    const program = started();
    const changed = program.update(start.slice(1));
    assert.deepEqual([...changed].sort(), ['a', 'b']);
    assert.deepEqual(
      program.diagnostics('b').map(({ code }) => code),
      ['unknown-name'],
    );
    assert.deepEqual(program.results('a'), []);
  });

  it('that changes a type is checked through', () => {
    const program = started();
    program.update([{ id: 'a', text: 'a = drop(1 A)' }, ...start.slice(1)]);
    assert.deepEqual(
      program.diagnostics('b').map(({ code }) => code),
      ['not-a-quantity'],
    );
  });

  it('a thousand times over costs no more code than the sheet needs', () => {
    const program = started();
    for (let i = 1; i <= 1000; i++) {
      program.update([{ id: 'a', text: `a = ${i} V + ${i} V * 2 + drop(3 A).volts` }, ...start.slice(1)]);
    }
    assert.equal(shown(program.results('b')[0].value), '9009 V');
  });
});

describe('what editors ask', () => {
  it('where a name is defined and used, and its type', () => {
    const info = started().name('a')!;
    assert.deepEqual([info.cell, info.definition, info.statement], ['a', { start: 0, end: 1 }, 0]);
    assert.deepEqual(info.references, [{ cell: 'b', span: { start: 4, end: 5 } }]);
    assert.equal(info.type.kind, 'quantity');
  });

  it('type and value of any expression', () => {
    const program = createProgram(smallLibrary);
    program.update([{ id: 'a', text: 'x = 2 V\ny = (x + 1 V) * 3' }]);
    const tree = program.tree('a')!;
    const sum = [...tree.kinds].findIndex(
      (kind, node) => kind === Node.Binary && tree.ends[node] < tree.text.length - 2,
    );
    assert.equal(shown(program.valueAt('a', sum)), '3 V');
    assert.equal(program.typeAt('a', sum)?.kind, 'quantity');
    assert.equal(program.valueAt('nowhere', 0), undefined);
  });

  it('nothing is known of a cell that is not there', () => {
    const program = started();
    assert.deepEqual([program.results('z'), program.diagnostics('z'), program.tree('z')], [[], [], undefined]);
  });
});

describe('a long sheet', () => {
  it('may be one chain from end to end', () => {
    const lines = ['x0 = 1 V'];
    for (let i = 1; i <= 5000; i++) {
      lines.push(`x${i} = x${i - 1} + 1 V`);
    }
    const program = createProgram(smallLibrary);
    program.update([{ id: 'a', text: lines.reverse().join('\n') }]);
    assert.equal(shown(program.results('a')[0].value), '5001 V');
  });

  it('may be one circle from end to end', () => {
    const lines = Array.from({ length: 3000 }, (_, i) => `x${i} = x${(i + 1) % 3000} + 1 V`);
    const program = createProgram(smallLibrary);
    program.update([{ id: 'a', text: lines.join('\n') }]);
    assert.equal(program.diagnostics('a').length, 3000);
  });
});
