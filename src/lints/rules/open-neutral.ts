import { figure } from '../../functions';
import { Node, spanOf } from '../../language';
import { defineLint } from '../contract';
import { voltsBefore } from '../written-volts';

/** Two legs of a three-wire system that add up to the whole but are not halves of it. */
export const openNeutral = defineLint({
  id: 'open-neutral',
  summary: 'Two measured legs are unequal and add up to the voltage across both: the pattern of an open neutral.',
  why:
    'With the neutral lost, the two legs of a three-wire supply lie in series and share its voltage by their loads: one falls ' +
    'as the other rises. Everything on the lighter leg is in danger within minutes.',
  sources: ['circuit theory: a voltage divider', 'common practice, no source: the pattern of an open neutral'],
  severity: 'warning',
  silent: [
    'The legs are within 5 % of one another.',
    'The legs do not add up to the whole: the high leg of a delta does not.',
    'The unequal taps are meant: write `allow open-neutral` with that as the reason.',
    'The voltages are worked out and not written down.',
  ],
  examples: {
    bad: ['leg_a = 96 V\nleg_b = 145 V\nacross = 241 V\nshare = leg_a / across\nother = leg_b / across\n'],
    good: ['leg_a = 119 V\nleg_b = 122 V\nacross = 241 V\nshare = leg_a / across\nother = leg_b / across\n'],
  },
  looksAt: [Node.Quantity],
  check({ tree, node }, report) {
    const [last, ...before] = voltsBefore(tree, node);
    for (const [i, second] of before.entries()) {
      const first = before.slice(i + 1).find((other) => isOpenNeutral([last.volts, second.volts, other.volts]));
      if (first) {
        const [low, high, across] = [last.volts, second.volts, first.volts].sort((a, b) => a - b);
        report({
          span: spanOf(tree, last.node),
          message: `Legs of ${figure(low)} V and ${figure(high)} V add up to the ${figure(across)} V across both: the pattern of an open neutral. Make safe first: open the main and call the utility or an electrician; take no more readings with it on.`,
        });
        return;
      }
    }
  },
});

/** How far the legs' sum may lie from the whole, and how unequal they must be, as parts of the whole. */
const sumWithin = 0.02;
const unequalFrom = 0.05;
const smallestLeg = 0.15;

/** Three-wire supplies of dwellings and small shops. */
const isSupply = (volts: number): boolean => volts >= 200 && volts <= 260;

function isOpenNeutral(volts: readonly number[]): boolean {
  const [low, high, across] = [...volts].sort((a, b) => a - b);
  return (
    isSupply(across) &&
    low >= smallestLeg * across &&
    Math.abs(low + high - across) <= sumWithin * across &&
    high - low > unequalFrom * across
  );
}
