import { conductorText, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn } from '../circuit-facts';
import { sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { isShortOf, isUpsized } from '../grounding';
import { callNodes } from '../statement-kinds';

/** A named equipment grounding conductor below what the overcurrent device asks for. */
export const undersizedEgc = defineLint({
  id: 'undersized-egc',
  summary: 'The equipment grounding conductor is smaller than the overcurrent device asks for.',
  why:
    'In a ground fault the equipment grounding conductor carries enough current to open the device. Its least size follows ' +
    'from the device’s rating. In parallel sets each raceway holds one of that size.',
  sources: ['NEC Table 250.122, 250.122(A), 250.122(F)'],
  severity: 'error',
  silent: [
    'The grounding conductor is as large as the circuit conductors: larger is never asked for.',
    'It is of another metal than the size compared with.',
    'None is named: a metal raceway may be the grounding conductor.',
  ],
  fix: 'Offers the smallest size that does; a person chooses, never fix-all.',
  examples: {
    bad: [
      'oven = circuit(load: 40 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 40 A, egc: 12 AWG Cu)\n',
    ],
    good: [
      'oven = circuit(load: 40 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 40 A, egc: 10 AWG Cu)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const { egc, smallestEgc, tableEgc = smallestEgc } = fact;
      if (fact.egcGiven && egc && smallestEgc && tableEgc && isShortOf(fact, tableEgc)) {
        const raised = isUpsized(fact)
          ? `, and ${conductorText(smallestEgc)} in step with the larger circuit conductors`
          : '';
        report({
          span: argumentSpan(statement, call, 'egc'),
          message: `${conductorText(egc)} grounds a circuit on a ${figure(fact.ocpd)} A device, which asks for at least ${conductorText(tableEgc)}${raised} (${cited(fact.edition, '250.122')}). Use ${smallestEgc.size.text} or larger.`,
          fixes: sizeFixes(statement, call, 'egc', egc, [smallestEgc]),
        });
      }
    }
  },
});
