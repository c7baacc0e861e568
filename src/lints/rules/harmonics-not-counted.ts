import { callSpan } from '../argument-places';
import { defineLint } from '../contract';
import { cited, editionOf } from '../editions';
import { callNodes } from '../statement-kinds';
import { ownWords } from '../words';

const nonlinear =
  /\bnon-?linear\b|\bleds?\b|\belectronic\w*\b|\bcomputers?\b|\bservers?\b|\bups\b|\bfluorescent\b|\bdischarge\b|\bswitch(ed)?-?mode\b|\bharmonics?\b/i;

/** The neutral of nonlinear loads from a formula that holds for linear ones. */
export const harmonicsNotCounted = defineLint({
  id: 'harmonics-not-counted',
  summary: 'The neutral current of nonlinear loads is taken from the formula for linear ones.',
  why:
    'Third harmonics of the three phases add up in the neutral and do not cancel: with LED drivers, electronics and discharge ' +
    'lamps it may carry more than a phase. It then counts as a current-carrying conductor and is not made smaller.',
  sources: ['NEC 310.15(E)(3)', 'circuit theory: triplen harmonics are in phase'],
  severity: 'warning',
  silent: ['The loads are linear: resistance heat, motors.', 'Nothing in name or remark speaks of nonlinear loads.'],
  examples: {
    bad: ['neutral = neutral_current(40 A, 42 A, 38 A) // LED floor lighting\n'],
    good: ['neutral = neutral_current(40 A, 42 A, 38 A) // resistance heat\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    const words = ownWords(statement);
    for (const call of statement.calls) {
      if (call.function === 'neutral_current' && nonlinear.test(words)) {
        report({
          span: callSpan(statement, call),
          message: `This formula holds for linear loads, and the remark speaks of ${nonlinear.exec(words)![0]}: third harmonics add up in the neutral. Measure it, or size it as a phase and count it as current-carrying (${cited(editionOf(statement.program.library.settings), '310.15(E)(3)')}).`,
        });
      }
    }
  },
});
