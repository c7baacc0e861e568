import type { CircuitFact, DeviceBounds } from '../../functions';
import { figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { ratingFix } from '../device-fixes';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** A device above what the rule of its own kind of load allows, on however large a conductor. */
export const ocpdOverKindLimit = defineLint({
  id: 'ocpd-over-kind-limit',
  summary: 'The overcurrent device is above what the rule of its kind of load allows.',
  why:
    'The devices of motors, air conditioners, welders, transformers and cords may stand above the ampacity, since something ' +
    'else looks after overload; but each rule ends somewhere, so that a fault in the equipment still opens the device. A ' +
    'larger conductor does not move that end.',
  sources: ['NEC 430.52, 440.22, 630.12, 630.32, 450.3(B), 240.5'],
  severity: 'error',
  silent: [
    'The device is within the first choice of its rule, next standard size up where the rule allows that.',
    'A nameplate limit is given: that bound counts (see `ocpd-over-nameplate`).',
    'The kind has no bound of its own: the general rule counts (see `ocpd-over-ampacity`).',
    'The motor did not start on a smaller one, or a secondary device is there: write `allow ocpd-over-kind-limit` with that as the reason.',
  ],
  fix: 'Offers the largest rating that is allowed; a person chooses, never fix-all.',
  examples: {
    bad: [
      'pump = circuit(load: 22 A, kind: motor, voltage: 230 V, phases: 3, conductor: 10 AWG Cu THHN, ocpd: 100 A)\n',
      'primary = circuit(load: 25 kVA, kind: transformer, continuous: no, voltage: 480 V, conductor: 1/0 AWG Cu THHN, ocpd: 150 A)\n',
    ],
    good: [
      'pump = circuit(load: 22 A, kind: motor, voltage: 230 V, phases: 3, conductor: 10 AWG Cu THHN, ocpd: 60 A)\n',
      'primary = circuit(load: 25 kVA, kind: transformer, continuous: no, voltage: 480 V, conductor: 4 AWG Cu THHN, ocpd: 70 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const bounds = fact.ocpdGiven ? fact.deviceBounds : undefined;
      if (bounds?.largest !== undefined && exceeds(fact.ocpd, bounds.largest)) {
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          message: `The device is ${figure(fact.ocpd)} A; kind ${fact.kind} allows at most ${figure(bounds.largest)} A (${reason(fact, bounds)}).`,
          fixes: ratingFix(statement, call, bounds.usual ?? bounds.largest),
        });
      } else if (bounds?.usual !== undefined && exceeds(fact.ocpd, bounds.usual)) {
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          severity: 'hint',
          message: `The device is ${figure(fact.ocpd)} A; kind ${fact.kind} allows ${figure(bounds.usual)} A (${reason(fact, bounds)}), and more only where ${bounds.onlyWhere}. Is that so? Then allow this with that reason.`,
          fixes: ratingFix(statement, call, bounds.usual),
        });
      }
    }
  },
});

const reason = (fact: CircuitFact, { section, because }: DeviceBounds): string =>
  `${cited(fact.edition, section)}; ${because}`;
