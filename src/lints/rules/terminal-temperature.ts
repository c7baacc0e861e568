import { type CircuitFact, conductorText, figure } from '../../functions';
import { Node } from '../../language';
import { argumentSpan } from '../argument-places';
import { circuitsIn, conductorsText, exceeds } from '../circuit-facts';
import { unmarkedAmpacityIn } from '../compared-ampacity';
import { defineLint } from '../contract';
import { exemptFromSmallConductorRule, hasRuleOfItsOwn, isOverAmpacity } from '../device-allowances';
import { statementFix } from '../device-fixes';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** Terminals of unknown marking that decide whether a conductor will do. */
export const terminalTemperature = defineLint({
  id: 'terminal-temperature',
  summary: 'Whether the conductor will do hangs on the marking of the terminals, and the sheet does not say it.',
  why:
    'A conductor may not carry more than the coolest terminal it ends in allows, whatever its insulation stands. Unmarked ' +
    'terminals of circuits up to 100 A count as 60 °C; many are marked 75 °C, at the device and at the equipment. Where that ' +
    'marking decides, it has to be read.',
  sources: ['NEC 110.14(C)(1)'],
  severity: 'hint',
  silent: [
    'The terminals’ rating is given.',
    'The conductor does at 60 °C as well, or fails at 75 °C too.',
    'The cable is held to 60 °C whatever its terminals: NM-B, UF-B.',
    'The small-conductor limit forbids it all the same.',
  ],
  fix: 'Inserts `terminals: 75 °C`, for one who has read the marking at both ends.',
  examples: {
    bad: ['oven = circuit(load: 45 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN)\n'],
    good: [
      'oven = circuit(load: 45 A, kind: general, continuous: no, voltage: 240 V, conductor: 8 AWG Cu THHN, terminals: 75 °C)\n',
    ],
  },
  looksAt: [...callNodes, Node.Check],
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      if (fact.conductorGiven && fact.at75 && failsNow(fact) && doesAt75(fact, fact.at75)) {
        report({
          span: argumentSpan(statement, call, 'conductor'),
          message: `${question(fact.edition, conductorsText(fact), fact.totalAmpacity, fact.at75.totalAmpacity)}, and ${figure(fact.requiredAmpacity)} A is required behind a ${figure(fact.ocpd)} A device. ${advice}`,
          fixes: statementFix(statement, call, 'terminals', '75 °C', 'State `terminals: 75 °C`'),
        });
      }
    }
    const compared = unmarkedAmpacityIn(statement);
    if (compared) {
      const { span, fact, wanted, edition, call } = compared;
      report({
        span,
        message: `${question(edition, conductorText(fact.conductor), fact.ampacity, fact.ampacityAt75)}, and ${figure(wanted)} A is asked of it. ${advice}`,
        fixes: call ? statementFix(statement, call, 'terminals', '75 °C', 'State `terminals: 75 °C`') : [],
      });
    }
  },
});

const question = (edition: string, conductor: string, at60: number, at75: number): string =>
  `Are the terminals at both ends marked 75 °C? Unmarked ones count as 60 °C (${cited(edition, '110.14(C)')}), which holds ${conductor} to ${figure(at60)} A; marked 75 °C it may carry ${figure(at75)} A`;

const advice = 'If they are, say `terminals: 75 °C`.';

const failsNow = (fact: CircuitFact): boolean =>
  exceeds(fact.requiredAmpacity, fact.totalAmpacity) ||
  (fact.ocpdGiven && isOverAmpacity(fact) && !hasRuleOfItsOwn(fact));

function doesAt75(fact: CircuitFact, { totalAmpacity, largestOcpd }: NonNullable<CircuitFact['at75']>): boolean {
  if (exceeds(fact.requiredAmpacity, totalAmpacity)) {
    return false;
  }
  const device = fact.ocpdGiven ? Math.max(fact.ocpd, fact.smallestOcpd) : fact.smallestOcpd;
  const small = fact.kind && exemptFromSmallConductorRule.has(fact.kind) ? undefined : fact.smallConductorLimit;
  const largest = Math.min(Math.max(totalAmpacity, largestOcpd), small ?? Number.POSITIVE_INFINITY);
  return hasRuleOfItsOwn(fact) || !exceeds(device, largest);
}
