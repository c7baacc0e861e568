import { conductorText } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn } from '../circuit-facts';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** Area between 1 AWG (42.4 mm²) and 1/0 AWG (53.5 mm²), the smallest size for parallel sets. */
const below1Over0Mm2 = 48;

/** Conductors in parallel below 1/0 AWG. */
export const parallelTooSmall = defineLint({
  id: 'parallel-too-small',
  summary: 'Conductors smaller than 1/0 AWG are run in parallel.',
  why:
    'Small conductors seldom share their current evenly, and one that takes more than its part overheats behind a device ' +
    'that sees only the sum. Parallel sets begin at 1/0 AWG, and all sets are alike in length, size, metal and insulation.',
  sources: ['NEC 310.10(G)'],
  severity: 'error',
  silent: [
    'The conductors are 1/0 AWG or larger.',
    'There is one set.',
    'An exception applies, such as control wiring, frequencies of 360 Hz and higher or existing neutrals: write `allow parallel-too-small` with it as the reason.',
  ],
  examples: {
    bad: [
      'feeder = circuit(load: 150 A, kind: general, continuous: no, voltage: 208 V, phases: 3, conductor: 2 AWG Cu THHN, sets: 2, terminals: 75 °C, ocpd: 150 A)\n',
    ],
    good: [
      'feeder = circuit(load: 250 A, kind: general, continuous: no, voltage: 208 V, phases: 3, conductor: 1/0 AWG Cu THHN, sets: 2, terminals: 75 °C, ocpd: 250 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (fact.conductorGiven && fact.sets > 1 && fact.conductor.size.mm2 < below1Over0Mm2) {
        report({
          span: argumentSpan(statement, call, 'conductor'),
          message: `${fact.sets} sets of ${conductorText(fact.conductor)} are run in parallel, which begins at 1/0 AWG (${cited(fact.edition, '310.10(G)')}). Use 1/0 AWG or larger, or one larger conductor.`,
        });
      }
    }
  },
});
