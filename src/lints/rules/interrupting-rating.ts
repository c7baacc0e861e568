import { type FaultFact, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** Equipment that cannot interrupt the fault current available to it. */
export const interruptingRating = defineLint({
  id: 'interrupting-rating',
  summary: 'More fault current is available than the equipment can interrupt.',
  why:
    'A device that is asked to interrupt more than its rating may burst. Its interrupting rating must be at least the fault ' +
    'current available at its line side.',
  sources: ['NEC 110.9, 110.10'],
  severity: 'error',
  silent: [
    'The rating is at or above the available current.',
    'No rating is given.',
    'The equipment is series rated, or a study of a current-limiting device covers it: write `allow interrupting-rating` with that as the reason.',
  ],
  examples: {
    bad: ['at_switchboard = fault_current(300 kVA, 208 V, 1.8 %, interrupting_rating: 10 kA)\n'],
    good: ['at_switchboard = fault_current(300 kVA, 208 V, 1.8 %, interrupting_rating: 65 kA)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const found of call.facts) {
        const { about, currentA, interruptingRatingA, edition } = found as FaultFact;
        if (about === 'fault' && interruptingRatingA !== undefined && exceeds(currentA, interruptingRatingA)) {
          report({
            span: argumentSpan(statement, call, 'interrupting_rating'),
            message: `${figure(currentA / 1000)} kA is available and the equipment interrupts ${figure(interruptingRatingA / 1000)} kA (${cited(edition, '110.9')}). Use equipment rated ${figure(currentA / 1000)} kA or more, or allow this with the listed series rating as the reason.`,
          });
        }
      }
    }
  },
});
