import assert from 'node:assert/strict';
import { isBroken, nodeAt, statementOf, textContent } from '../../../src/language/syntax/navigation';
import { Node, textOf } from '../../../src/language/syntax/tree';
import { readCell } from './read-cell';

const text = 'a = 5 V\nb = f(kiln.drop, x: a) in mV\ncheck b < "c"\nd = (1\ne = 2';
const tree = readCell(text);
const found = (offset: number) => {
  const path = nodeAt(tree, offset);
  return path && `${Node[tree.kinds[path.node]]} ${textOf(tree, path.node)}`;
};

describe('the node at a place', () => {
  it('is the innermost one that holds the place or touches it', () => {
    assert.equal(found(0), 'Name a');
    assert.equal(found(text.indexOf('5 V') + 1), 'Quantity 5 V');
    assert.equal(found(text.indexOf('drop') + 4), 'Name drop');
    assert.equal(found(text.indexOf('in mV') + 3), 'Convert f(kiln.drop, x: a) in mV');
  });

  it('comes with the nodes around it, outermost first', () => {
    const { parents } = nodeAt(tree, text.indexOf('drop'))!;
    assert.deepEqual(
      parents.map((node) => Node[tree.kinds[node]]),
      ['Definition', 'Convert', 'Call', 'Argument', 'Member'],
    );
  });

  it('is none outside every statement', () => {
    assert.equal(nodeAt(readCell('a = 1\n\n\nb = 2'), 7), undefined);
  });
});

describe('a statement', () => {
  it('is found from any node in it', () => {
    for (const [index, statement] of tree.statements.entries()) {
      assert.equal(statementOf(tree, statement), index);
    }
    assert.equal(statementOf(tree, nodeAt(tree, text.indexOf('"c"') + 1)!.node), 2);
  });

  it('is broken when an error lies in it, and its neighbours are not', () => {
    assert.deepEqual(
      tree.statements.map((statement) => isBroken(tree, statement)),
      [false, false, false, true, false],
    );
  });

  it('gives its texts without their quotation marks', () => {
    assert.equal(textContent(tree, nodeAt(tree, text.indexOf('"c"') + 1)!.node), 'c');
    const open = readCell('x = "abc');
    assert.equal(textContent(open, nodeAt(open, 5)!.node), 'abc');
  });
});
