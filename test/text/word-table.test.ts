import { strict as assert } from 'node:assert';
import fc from 'fast-check';
import { codesOf, WordTable } from '../../src/text';

/** Few letters, so that words come again, and some that share their beginning. */
const word = fc.string({ unit: fc.constantFrom('a', 'b', 'Ω', '1'), maxLength: 4 });

describe('Words by number', () => {
  it('gives each distinct word one number, in the order they come, wherever they stand in a text', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 300 }), (words) => {
        const table = new WordTable();
        const text = words.join('|');
        const codes = codesOf(text);
        table.begin(text, codes);
        let start = 0;
        const known: string[] = [];
        for (const one of words) {
          const end = start + one.length;
          if (!known.includes(one)) {
            assert.equal(table.find(codes, start, end), -1);
            known.push(one);
          }
          assert.equal(table.add(start, end), known.indexOf(one));
          assert.equal(table.find(codesOf(one), 0, one.length), known.indexOf(one));
          start = end + 1;
        }
        assert.deepEqual(table.words, known);
      }),
    );
  });

  it('knows nothing of the words of the text before, and leaves their array alone', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 100 }), fc.array(word, { maxLength: 100 }), (before, after) => {
        const table = WordTable.of(before);
        const old = table.words;
        const text = after.join('|');
        table.begin(text, codesOf(text));
        for (const one of before) {
          assert.equal(table.find(codesOf(one), 0, one.length), -1);
        }
        let start = 0;
        for (const one of after) {
          table.add(start, start + one.length);
          start += one.length + 1;
        }
        assert.deepEqual(table.words, [...new Set(after)]);
        assert.deepEqual(old, [...new Set(before)]);
      }),
    );
  });
});
