import { type CircuitFact, figure } from '../../functions';
import type { CallRecord } from '../../language';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { largestGeneralDevice } from '../device-allowances';
import { ratingFix } from '../device-fixes';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** A device that the load itself would open. */
export const ocpdUnderLoad = defineLint({
  id: 'ocpd-under-load',
  summary: 'The overcurrent device is rated below the current that it must carry.',
  why:
    'A device that carries more than its rating opens sooner or later, so the load cannot run on it. A fire pump must run ' +
    'on even where it is stuck, so its device carries the locked-rotor current.',
  sources: ['NEC 210.20, 215.3; 695.4(B)(2)', 'the time-current characteristic of any overcurrent device'],
  severity: 'error',
  silent: [
    'The device is at or above the load’s current, or a fire pump’s locked-rotor current.',
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
      if (!fact.ocpdGiven) {
        continue;
      }
      const message = opensUnderLoad(call, fact) ?? opensAtStart(fact);
      if (message) {
        const fits = !exceeds(fact.smallestOcpd, largestGeneralDevice(fact));
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          message,
          fixes: fits && fact.kind !== 'fire_pump' ? ratingFix(statement, call, fact.smallestOcpd) : [],
        });
      }
    }
  },
});

const opensUnderLoad = (call: CallRecord, fact: CircuitFact): string | undefined =>
  fact.kind !== 'welder' && call.arguments.get('load')?.given && exceeds(fact.loadCurrent, fact.ocpd)
    ? `The load draws ${figure(fact.loadCurrent)} A and the device is rated ${figure(fact.ocpd)} A: it will open. The smallest standard rating for this load is ${figure(fact.smallestOcpd)} A.`
    : undefined;

function opensAtStart({ ocpd, deviceBounds, edition }: CircuitFact): string | undefined {
  const { least, section = '', because } = deviceBounds ?? {};
  return least !== undefined && exceeds(least, ocpd)
    ? `The device is ${figure(ocpd)} A and must carry the ${because} for as long as it lasts (${cited(edition, section)}): nothing but a short circuit may stop this pump. Use a rating of at least ${figure(least)} A, or an assembly listed for fire pumps: allow this with that reason.`
    : undefined;
}
