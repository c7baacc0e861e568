import assert from 'node:assert/strict';
import fc from 'fast-check';
import { format } from '../../../src/language/syntax/format';
import { applyEdits } from '../../../src/text';
import { mutatedCell, roughCell } from './cell-arbitraries';
import { expectedText, fixturesIn, readFixture } from './fixtures';
import { printTree } from './print-tree';
import { readCell } from './read-cell';

const rule = '\n--------\n';
const formatted = (text: string): string => applyEdits(text, format(readCell(text)));
const good = fixturesIn('trees').map((name) => readFixture('trees', name).split(rule)[0]);
const anyCell = fc.oneof(roughCell, mutatedCell(good));

describe('format', () => {
  for (const name of fixturesIn('layouts')) {
    it(name.replace(/-|\.txt/g, ' ').trim(), () => {
      const [text] = readFixture('layouts', name).split(rule);
      const actual = `${text}${rule}${formatted(text)}\n`;
      assert.equal(actual, expectedText('layouts', name, actual));
    });
  }

  it('changes nothing the second time', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const once = formatted(text);
        assert.equal(formatted(once), once);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps the meaning, the comments and the problems', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const before = readCell(text);
        const after = readCell(formatted(text));
        assert.equal(printTree(after), printTree(before));
        assert.deepEqual(
          after.comments.map(({ text, statement }) => ({ text, statement })),
          before.comments.map(({ text, statement }) => ({ text, statement })),
        );
        assert.deepEqual(
          after.diagnostics.map(({ code }) => code),
          before.diagnostics.map(({ code }) => code),
        );
      }),
      { numRuns: 2000 },
    );
  });

  it('changes white space, and bars at the end of table rows, only', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const bare = (cell: string) => cell.replace(/[\s|\u200b]/g, '');
        assert.equal(bare(formatted(text)), bare(text));
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps line ends as they are', () => {
    assert.equal(formatted('a=1\r\n\r\nb  = 2 \r\n'), 'a = 1\r\n\r\nb = 2\r\n');
  });
});
