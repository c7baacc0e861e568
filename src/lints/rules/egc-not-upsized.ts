import { conductorText, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn } from '../circuit-facts';
import { sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { isShortOf, isUpsized } from '../grounding';
import { callNodes } from '../statement-kinds';

/** A grounding conductor that stayed behind when the circuit conductors were made larger. */
export const egcNotUpsized = defineLint({
  id: 'egc-not-upsized',
  summary: 'The circuit conductors are larger than they need be, and the equipment grounding conductor is not.',
  why:
    'Conductors are made larger for a long run, so that enough voltage arrives. A fault at the far end meets the same ' +
    'length: the grounding conductor is raised in the same proportion of area, or the device may open too late.',
  sources: ['NEC 250.122(B)'],
  severity: 'error',
  silent: [
    'The circuit conductors are no larger than load and derating ask for.',
    'The grounding conductor is as large as the circuit conductors: larger is never asked for.',
    'None is named: a metal raceway may be the grounding conductor.',
    'It is too small for the device alone: `undersized-egc` says so.',
  ],
  fix: 'Offers the smallest size that does; a person chooses, never fix-all.',
  examples: {
    bad: [
      'pump_house = circuit(load: 16 A, kind: general, continuous: yes, voltage: 120 V, conductor: 6 AWG Cu THHN, ocpd: 20 A, egc: 12 AWG Cu)\n',
    ],
    good: [
      'pump_house = circuit(load: 16 A, kind: general, continuous: yes, voltage: 120 V, conductor: 6 AWG Cu THHN, ocpd: 20 A, egc: 6 AWG Cu)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const { egc, smallestEgc, tableEgc } = fact;
      if (fact.egcGiven && egc && smallestEgc && tableEgc && isUpsized(fact) && isShortOf(fact, smallestEgc)) {
        if (isShortOf(fact, tableEgc)) {
          continue;
        }
        report({
          span: argumentSpan(statement, call, 'egc'),
          message: `${conductorText(fact.conductor)} is larger than this load needs, so the grounding conductor grows with it: from ${conductorText(tableEgc)} for the ${figure(fact.ocpd)} A device to ${conductorText(smallestEgc)} (${cited(fact.edition, '250.122(B)')}); this one is ${conductorText(egc)}. Use ${smallestEgc.size.text} or larger.`,
          fixes: sizeFixes(statement, call, 'egc', egc, [smallestEgc]),
        });
      }
    }
  },
});
