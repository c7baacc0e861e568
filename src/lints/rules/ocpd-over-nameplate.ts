import { figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { ratingFix } from '../device-fixes';
import { callNodes } from '../statement-kinds';

/** A device above the largest one that the equipment's nameplate allows. */
export const ocpdOverNameplate = defineLint({
  id: 'ocpd-over-nameplate',
  summary: 'The overcurrent device is above the largest that the nameplate allows.',
  why:
    'The nameplate of air-conditioning and refrigeration equipment states the largest overcurrent device (MOCP) that it was ' +
    'tested behind. A larger one may not clear a fault inside it. A smaller one is allowed as long as the equipment starts.',
  sources: ['NEC 110.3(B), 440.4, 440.22'],
  severity: 'error',
  silent: ['The device is at or below the nameplate limit.', 'No nameplate limit is given.'],
  fix: 'Offers the nameplate’s largest rating; a person chooses, never fix-all.',
  examples: {
    bad: [
      'condenser = circuit(mca: 14 A, mocp: 20 A, kind: hvac, voltage: 240 V, conductor: 10 AWG Cu THHN, ocpd: 30 A)\n',
    ],
    good: [
      'condenser = circuit(mca: 28 A, mocp: 40 A, kind: hvac, voltage: 240 V, conductor: 10 AWG Cu THHN, ocpd: 30 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (fact.mocp !== undefined && exceeds(fact.ocpd, fact.mocp)) {
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          message: `The device is ${figure(fact.ocpd)} A and the nameplate allows at most ${figure(fact.mocp)} A (${fact.edition}: 110.3(B), 440.4). ${exceeds(fact.smallestOcpd, fact.mocp) ? `The load asks for ${figure(fact.smallestOcpd)} A or more: read the nameplate again, these two cannot both be right` : `Use a device of ${figure(fact.mocp)} A or less`}.`,
          fixes: exceeds(fact.smallestOcpd, fact.mocp) ? [] : ratingFix(statement, call, fact.mocp),
        });
      }
    }
  },
});
