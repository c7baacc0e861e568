import { type CircuitFact, type CircuitKind, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { carryingText, chainText, circuitsIn, exceeds } from '../circuit-facts';
import { sizeAdvice, sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import { largestGeneralDevice } from '../device-allowances';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** A named conductor whose ampacity falls short of what the load asks for. */
export const undersizedConductor = defineLint({
  id: 'undersized-conductor',
  summary: 'The conductor may carry less than the load requires.',
  why:
    'A conductor that carries more than its ampacity runs hotter than its insulation and terminals are rated for. What it ' +
    'must carry is the load, with 25 % added where the load is continuous. That an overcurrent device may be rounded up ' +
    'to the next standard size protects the conductor; it does not let the conductor carry more.',
  sources: [
    'NEC 210.19, 215.2, 310.16, 110.14(C); by kind 310.12, 430.22, 440.32, 630.11, 695.6',
    'NEC 240.4(B): the round-up is for the device alone',
  ],
  severity: 'error',
  silent: [
    'The required current is at or below the ampacity, whatever the device is rated.',
    'A nameplate minimum circuit ampacity is given and the conductor carries it.',
    'The conductor is left to the calculation.',
  ],
  fix: 'Offers the smallest size that does everything and the next two; a person chooses, never fix-all.',
  examples: {
    bad: [
      'kiln = circuit\n  load: 17.4 A\n  continuous: yes\n  kind: general\n  voltage: 208 V\n  conductor: 12 AWG Cu THHN\n',
      'charger = circuit(load: 48 A, kind: evse, voltage: 240 V, conductor: 6 AWG Cu NM-B, ocpd: 60 A)\n',
    ],
    good: [
      'kiln = circuit\n  load: 17.4 A\n  continuous: yes\n  kind: general\n  voltage: 208 V\n  conductor: 10 AWG Cu THHN\n',
      'condenser = circuit(mca: 44 A, mocp: 60 A, kind: hvac, voltage: 240 V, conductor: 8 AWG Cu THHN, terminals: 75 °C, ocpd: 60 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (fact.conductorGiven && exceeds(fact.requiredAmpacity, fact.totalAmpacity)) {
        report({
          span: argumentSpan(statement, call, 'conductor'),
          message: messageFor(fact),
          fixes: sizeFixes(statement, call, 'conductor', fact.conductor, fact.sufficient),
        });
      }
    }
  },
});

/** Where a kind of load has its own rule for what the conductor must carry. */
const sections: { readonly [K in CircuitKind]?: string } = {
  motor: '430.22',
  hvac: '440.32',
  welder: '630.11',
  fire_pump: '695.6',
  dwelling_service: '310.12',
};

function messageFor(fact: CircuitFact): string {
  const leansOnRoundUp = exceeds(fact.ocpd, fact.totalAmpacity) && !exceeds(fact.ocpd, largestGeneralDevice(fact));
  const requirement = requirementText(fact);
  return [
    `${requirement.charAt(0).toUpperCase()}${requirement.slice(1)} (${cited(fact.edition, (fact.kind && sections[fact.kind]) ?? '210.19, 215.2')}) of ${carryingText(fact)}.`,
    ...(leansOnRoundUp
      ? [`That ${figure(fact.ocpd)} A is the next standard device size does not let the conductor carry more.`]
      : []),
    sizeAdvice(fact.sufficient),
    chainText(fact),
  ].join(' ');
}

/** `17.4 A × 125 % = 21.75 A is required`, with how it arose where that does not end in the amperes themselves. */
function requirementText(fact: CircuitFact): string {
  const required = `${figure(fact.requiredAmpacity)} A`;
  return fact.requiredBecause.endsWith(required)
    ? `${fact.requiredBecause} is required`
    : `${required} is required, ${fact.requiredBecause},`;
}
