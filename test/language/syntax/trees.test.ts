import assert from 'node:assert/strict';
import { expectedText, fixturesIn, readFixture } from './fixtures';
import { printTree } from './print-tree';
import { readCell } from './read-cell';

const rule = '\n--------\n';

describe('a cell is read as this tree', () => {
  for (const name of fixturesIn('trees')) {
    it(name.replace(/-|\.txt/g, ' ').trim(), () => {
      const [text] = readFixture('trees', name).split(rule);
      const tree = readCell(text);
      assert.deepEqual(tree.diagnostics, []);
      const actual = `${text}${rule}${printTree(tree)}\n`;
      assert.equal(actual, expectedText('trees', name, actual));
    });
  }
});
