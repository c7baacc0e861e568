import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readExpression, Strength } from './expressions';
import type { Reader } from './reader';

/** `low to high` or `low .. high`, after the word that leads to it. */
export function readRange(r: Reader, word: 'to' | '..'): number {
  const { tree } = r;
  const low = readExpression(r, Strength.Sum);
  let high: number;
  if (word === 'to' ? r.isWord('to') : r.token === Token.Range) {
    r.advance();
    high = readExpression(r, Strength.Sum);
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-range-end',
        r.lastStart,
        r.lastEnd,
        `A range has two ends, and the second is missing. Write \`${word}\` and the upper end behind this.`,
      );
    }
    high = r.absent();
  }
  tree.link(low, high);
  return tree.parent(Node.Range, tree.starts[low], Math.max(r.lastEnd, tree.ends[high]), low);
}
