import assert from 'node:assert/strict';
import fc from 'fast-check';
import { nearest } from '../../../src/language';
import '../../fuzz-seed';

/** Insertions, deletions, replacements and swaps of neighbours, by the definition. */
function distance(a: string, b: string): number {
  const known = new Map<string, number>();
  const from = (i: number, j: number): number => {
    const key = `${i} ${j}`;
    const found = known.get(key);
    if (found !== undefined) {
      return found;
    }
    const ways = [i === 0 ? j : Number.POSITIVE_INFINITY, j === 0 ? i : Number.POSITIVE_INFINITY];
    if (i > 0 && j > 0) {
      ways.push(from(i - 1, j) + 1, from(i, j - 1) + 1, from(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        ways.push(from(i - 2, j - 2) + 1);
      }
    }
    const least = Math.min(...ways);
    known.set(key, least);
    return least;
  };
  return from(a.length, b.length);
}

/** The nearest word by the definition: near enough, and the first in the alphabet of equally near ones. */
function expected(wanted: string, words: readonly string[]): string | undefined {
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  const near = words
    .filter((word) => word !== wanted)
    .map((word) => ({ word, far: distance(wanted.toLowerCase(), word.toLowerCase()) }))
    .filter(({ word, far }) => far <= limit && Math.abs(word.length - wanted.length) <= limit)
    .sort((a, b) => a.far - b.far || (a.word < b.word ? -1 : 1));
  return near[0] && (near[0].far === 0 || wanted.length > 1) ? near[0].word : undefined;
}

describe('the word most like another', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'B', 'c', '_', '1'), minLength: 1, maxLength: 9 });

  it('is the nearest by the number of slips between them', () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 8 }), (wanted, words) => {
        assert.equal(nearest(wanted, words), expected(wanted, words));
      }),
      { numRuns: 1000 },
    );
  });

  it('is found among long words', () => {
    const long = 'total_of_every_branch_circuit_and_feeder_'.repeat(4);
    assert.equal(nearest(`${long}ab`, [`${long}ba`, `${long}cde`]), `${long}ba`);
  });
});
