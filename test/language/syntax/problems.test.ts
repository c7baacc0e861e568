import assert from 'node:assert/strict';
import { withCarets, withoutCarets } from './carets';
import { expectedText, fixturesIn, readFixture } from './fixtures';
import { readCell } from './read-cell';

describe('what is wrong is said at its place', () => {
  for (const name of fixturesIn('problems')) {
    it(name.replace(/-|\.txt/g, ' ').trim(), () => {
      const text = withoutCarets(readFixture('problems', name));
      const tree = readCell(text);
      const actual = withCarets(text, tree.diagnostics);
      assert.equal(actual, expectedText('problems', name, actual));
      assert.notEqual(tree.diagnostics.length, 0);
    });
  }
});
