import { figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { largestGeneralDevice } from '../device-allowances';
import { ratingFix } from '../device-fixes';
import { callNodes } from '../statement-kinds';

/** A device that the load itself would open. */
export const ocpdUnderLoad = defineLint({
  id: 'ocpd-under-load',
  summary: 'The overcurrent device is rated below the load’s own current.',
  why: 'A device that carries more than its rating opens sooner or later, so the load cannot run on it.',
  sources: ['NEC 210.20, 215.3', 'the time-current characteristic of any overcurrent device'],
  severity: 'error',
  silent: [
    'The device is at or above the load’s current.',
    'The kind is welder: its load runs in short bursts.',
    'Only a nameplate minimum circuit ampacity is given: it is more than the load.',
  ],
  fix: 'Offers the smallest standard rating, where the conductor suits it; a person chooses, never fix-all.',
  examples: {
    bad: [
      'oven = circuit(load: 32 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 30 A)\n',
    ],
    good: [
      'oven = circuit(load: 32 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 40 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (
        fact.ocpdGiven &&
        fact.kind !== 'welder' &&
        call.arguments.get('load')?.given &&
        exceeds(fact.loadCurrent, fact.ocpd)
      ) {
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          message: `The load draws ${figure(fact.loadCurrent)} A and the device is rated ${figure(fact.ocpd)} A: it will open. The smallest standard rating for this load is ${figure(fact.smallestOcpd)} A.`,
          fixes: exceeds(fact.smallestOcpd, largestGeneralDevice(fact))
            ? []
            : ratingFix(statement, call, fact.smallestOcpd),
        });
      }
    }
  },
});
