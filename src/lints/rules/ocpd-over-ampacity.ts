import { type CircuitFact, conductorText, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { carryingText, chainText, circuitsIn, exceeds } from '../circuit-facts';
import { sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import {
  breaksSmallConductorRule,
  hasRuleOfItsOwn,
  isOverAmpacity,
  kindsThatAllow,
  largestGeneralDevice,
} from '../device-allowances';
import { kindFixes, ratingFix } from '../device-fixes';
import { callNodes } from '../statement-kinds';

/** An overcurrent device above what its conductor may carry, with no rule that allows it. */
export const ocpdOverAmpacity = defineLint({
  id: 'ocpd-over-ampacity',
  summary: 'The overcurrent device is rated above what the conductor may carry.',
  why:
    'The device is to open before the conductor overheats, so its rating follows the ampacity: the next standard size up ' +
    'is allowed to 800 A, and none above it beyond that. Motors, air conditioners, welders, taps, dwelling services and ' +
    'fire pumps have rules of their own that allow more, so a circuit whose kind is not said is asked for it.',
  sources: [
    'NEC 240.4(B), 240.4(C), 240.6(A)',
    'NEC 240.4(A), (E), (G); 310.12; 430.52; 440.22; 630.12; 630.32; 695.4',
  ],
  severity: 'error',
  silent: [
    'The device is the next standard size above the ampacity, at most 800 A.',
    'The declared kind has a rule of its own: motor, hvac, welder, tap, dwelling_service, fire_pump, cord (see `ocpd-over-kind-limit`).',
    'A nameplate largest device is given: that bound counts (see `ocpd-over-nameplate`).',
    '`small-conductor-limit` says it more exactly.',
  ],
  fix: 'Offers the largest rating that is allowed, sizes that would do behind the device, or to state the kind; a person chooses, never fix-all.',
  examples: {
    bad: [
      'oven = circuit(load: 30 A, kind: general, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 60 A)\n',
      'feed = circuit(load: 30 A, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 60 A)\n',
    ],
    good: [
      'oven = circuit(load: 40 A, kind: general, voltage: 240 V, conductor: 6 AWG Cu THHN, ocpd: 60 A)\n',
      'condenser = circuit(mca: 44 A, mocp: 60 A, kind: hvac, voltage: 240 V, conductor: 8 AWG Cu THHN, terminals: 75 °C, ocpd: 60 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (!fact.ocpdGiven || !isOverAmpacity(fact)) {
        continue;
      }
      const span = argumentSpan(statement, call, 'ocpd');
      const allowed = largestGeneralDevice(fact);
      const remedies = [
        ...(exceeds(fact.smallestOcpd, allowed) ? [] : ratingFix(statement, call, allowed)),
        ...sizeFixes(statement, call, 'conductor', fact.conductor, fact.sufficient),
      ];
      const kinds = kindsThatAllow(fact);
      if (fact.kind === undefined && kinds.length > 0) {
        report({
          span,
          severity: 'hint',
          message: question(fact, kinds),
          fixes: [...kindFixes(statement, call, fact), ...remedies],
        });
        continue;
      }
      const toldElsewhere = fact.kind !== undefined && breaksSmallConductorRule(fact);
      if (exceeds(fact.ocpd, allowed) && !hasRuleOfItsOwn(fact) && !toldElsewhere) {
        report({ span, message: refusal(fact, allowed), fixes: remedies });
      }
    }
  },
});

const compared = (fact: CircuitFact): string => `The ${figure(fact.ocpd)} A device protects ${carryingText(fact)}.`;

const question = (fact: CircuitFact, kinds: readonly string[]): string =>
  [
    compared(fact),
    `Some kinds of load allow that: say which with \`kind:\` (${kinds.join(', ')}).`,
    `For any other use at most ${figure(largestGeneralDevice(fact))} A (${fact.edition}: 240.4)${orSize(fact)}.`,
    chainText(fact),
  ].join(' ');

const refusal = (fact: CircuitFact, largest: number): string =>
  [
    compared(fact),
    fact.kind ? `Kind ${fact.kind} allows at most` : 'No kind of load allows that: use at most',
    `${figure(largest)} A (${fact.edition}: 240.4)${orSize(fact)}.`,
    chainText(fact),
  ].join(' ');

const orSize = (fact: CircuitFact): string =>
  fact.sufficient.length > 0 ? `; ${conductorText(fact.sufficient[0])} would do for this device` : '';
