import { type CircuitFact, conductorText, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import { breaksSmallConductorRule, isOverAmpacity } from '../device-allowances';
import { kindFixes, ratingFix } from '../device-fixes';
import { callNodes } from '../statement-kinds';

/** A device above the fixed limit for 14, 12 and 10 AWG. */
export const smallConductorLimit = defineLint({
  id: 'small-conductor-limit',
  summary: 'The overcurrent device is above the fixed limit for a small conductor.',
  why:
    'Copper 14, 12 and 10 AWG is held to 15, 20 and 30 A, aluminum 12 and 10 AWG to 15 and 25 A, whatever the ampacity ' +
    'table says. Motors, air conditioners, welders, taps and cords are excepted by their own rules; space heating, water ' +
    'heaters, vehicle charging and general loads are not.',
  sources: ['NEC 240.4(D)', 'NEC 240.4(E), 240.4(G), 240.5: what is excepted'],
  severity: 'error',
  silent: [
    'The declared kind is motor, hvac, welder, tap, fire_pump or cord.',
    'The conductor is 8 AWG or larger.',
    'No kind is declared and the device is above the ampacity too: `ocpd-over-ampacity` asks for the kind.',
  ],
  fix: 'Offers the allowed rating, sizes that would do, or to state the kind; a person chooses, never fix-all.',
  examples: {
    bad: [
      'heater = circuit(load: 19 A, kind: space_heating, voltage: 240 V, conductor: 12 AWG Cu THHN, terminals: 75 °C, ocpd: 25 A)\n',
      'outlets = circuit(load: 10 A, voltage: 120 V, conductor: 12 AWG Cu THHN, terminals: 75 °C, ocpd: 25 A)\n',
    ],
    good: [
      'outlets = circuit(load: 10 A, kind: general, voltage: 120 V, conductor: 12 AWG Cu THHN, ocpd: 20 A)\n',
      'condenser = circuit(mca: 18 A, mocp: 30 A, kind: hvac, voltage: 240 V, conductor: 12 AWG Cu THHN, ocpd: 30 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const limit = fact.smallConductorLimit;
      if (!fact.ocpdGiven || limit === undefined || !breaksSmallConductorRule(fact)) {
        continue;
      }
      const asked = fact.kind === undefined;
      if (asked && isOverAmpacity(fact)) {
        continue;
      }
      report({
        span: argumentSpan(statement, call, 'ocpd'),
        severity: asked ? 'hint' : undefined,
        message: messageFor(fact, limit),
        fixes: [
          ...(asked ? kindFixes(statement, call, fact) : []),
          ...(exceeds(fact.smallestOcpd, limit) ? [] : ratingFix(statement, call, limit)),
          ...sizeFixes(statement, call, 'conductor', fact.conductor, fact.sufficient),
        ],
      });
    }
  },
});

function messageFor(fact: CircuitFact, limit: number): string {
  const size = `${fact.conductor.size.text} ${fact.conductor.material}`;
  const ampacity = exceeds(fact.totalAmpacity, limit) ? `, though its ampacity is ${figure(fact.totalAmpacity)} A` : '';
  return [
    `${size} is held to a ${figure(limit)} A device${ampacity} (${fact.edition}: 240.4(D)); this one is ${figure(fact.ocpd)} A.`,
    fact.kind
      ? `Kind ${fact.kind} is not excepted.`
      : 'Motors, air conditioners, welders, taps and cords are excepted: say which with `kind:`.',
    remedy(fact, limit),
  ].join(' ');
}

function remedy(fact: CircuitFact, limit: number): string {
  const size = fact.sufficient.length > 0 ? `${conductorText(fact.sufficient[0])} or larger` : 'a larger conductor';
  return exceeds(fact.smallestOcpd, limit)
    ? `The load needs ${figure(fact.smallestOcpd)} A: use ${size}.`
    : `Use ${figure(limit)} A, or ${size}.`;
}
