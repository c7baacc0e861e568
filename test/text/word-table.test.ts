import { strict as assert } from 'node:assert';
import fc from 'fast-check';
import { WordTable } from '../../src/text';

/** Few letters, so that words come again, and some that share their beginning. */
const word = fc.string({ unit: fc.constantFrom('a', 'b', 'Ω', '1'), maxLength: 4 });

describe('Words by number', () => {
  it('gives each distinct word one number, in the order they come, wherever they stand in a text', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 300 }), (words) => {
        const table = new WordTable();
        const text = words.join('|');
        let start = 0;
        const known: string[] = [];
        for (const one of words) {
          const end = start + one.length;
          if (!known.includes(one)) {
            assert.equal(table.find(text, start, end), -1);
            known.push(one);
          }
          assert.equal(table.add(text, start, end), known.indexOf(one));
          assert.equal(table.find(one, 0, one.length), known.indexOf(one));
          start = end + 1;
        }
        assert.deepEqual(table.words, known);
      }),
    );
  });

  it('knows nothing of the words from before it was cleared, and leaves their array alone', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 100 }), fc.array(word, { maxLength: 100 }), (before, after) => {
        const table = new WordTable(before);
        const old = table.words;
        table.clear();
        for (const one of before) {
          assert.equal(table.find(one, 0, one.length), -1);
        }
        for (const one of after) {
          table.add(one, 0, one.length);
        }
        assert.deepEqual(table.words, [...new Set(after)]);
        assert.deepEqual(old, [...new Set(before)]);
      }),
    );
  });
});
