import assert from 'node:assert/strict';
import { createProgram } from '../../../src/language';
import { smallLibrary } from '../small-library';
import { withCarets, withoutCarets } from '../syntax/carets';
import { expectedText, fixturesIn, readFixture } from '../syntax/fixtures';

const folder = '../checking/problems';

describe('what does not fit together is said at its place', () => {
  for (const name of fixturesIn(folder)) {
    it(name.replace(/-|\.txt/g, ' ').trim(), () => {
      const text = withoutCarets(readFixture(folder, name));
      const program = createProgram(smallLibrary);
      program.update([{ id: 'cell', text }]);
      const actual = withCarets(text, program.diagnostics('cell'));
      assert.equal(actual, expectedText(folder, name, actual));
      assert.notEqual(program.diagnostics('cell').length, 0);
    });
  }
});
