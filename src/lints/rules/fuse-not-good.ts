import { figure } from '../../functions';
import { children, Node, spanOf } from '../../language';
import { defineLint } from '../contract';
import { isOhmReading } from '../readings';
import { ownWords } from '../words';

/** A good fuse of an ampere and more reads about what the leads read; above this many ohms it does not. */
const largestGood = 1;

const fuse = /\bfuses?\b/i;
const otherwise = /\bptc\b|thermistor|resettable|\bpolyfuse|\bmA\b|\b0?\.\d+ ?A\b/i;

/** A fuse that reads more than its leads. */
export const fuseNotGood = defineLint({
  id: 'fuse-not-good',
  summary: 'A fuse reads more than about an ohm.',
  why:
    'A good fuse of some amperes reads about what the meter leads read. One of 5 Ω would turn 4.5 kW into heat at 30 A. In ' +
    'the circuit other paths may also fake a pass: take the fuse out.',
  sources: ['Joule’s law: P = I²R', 'common practice, no source: what a good fuse reads'],
  severity: 'warning',
  silent: [
    'The fuse reads 1 Ω or less.',
    'Its rating is below an ampere, where ohms are normal.',
    'It is a thermistor (PTC) and resets itself.',
  ],
  examples: { bad: ['fuse = 5 Ω // 30 A, out of its holder\n'], good: ['fuse = 0.3 Ω // 30 A, out of its holder\n'] },
  looksAt: [Node.Quantity],
  check(statement, report) {
    const { tree, node, result } = statement;
    const expression = [...children(tree, node)][1];
    if (tree.kinds[node] !== Node.Definition || expression === undefined) {
      return;
    }
    const words = ownWords(statement);
    if (!fuse.test(words) || otherwise.test(words) || !isOhmReading({ ...statement, node: expression })) {
      return;
    }
    const ohms = result.value?.kind === 'quantity' ? result.value.base : 0;
    if (ohms > largestGood) {
      report({
        span: spanOf(tree, expression),
        message: `A good fuse reads about what the leads read; ${figure(ohms)} Ω would turn ${figure(ohms * 900)} W into heat at 30 A. Take it as blown, and replace it by the same type and rating.`,
      });
    }
  },
});
