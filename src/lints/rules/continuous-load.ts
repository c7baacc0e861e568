import type { CircuitFact, CircuitKind } from '../../functions';
import { figure } from '../../functions';
import type { CallRecord } from '../../language';
import { Node, spanOf } from '../../language';
import type { Fix } from '../../text';
import { argumentNode, argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { continuousFactor } from '../continuous-factor';
import { defineLint, type LintedStatement, type Report } from '../contract';
import { largestGeneralDevice } from '../device-allowances';
import { ratingFix, statementFix } from '../device-fixes';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** Kinds that a rule counts as continuous, however long they run. */
const continuousByRule: { readonly [K in CircuitKind]?: { readonly what: string; readonly section: string } } = {
  space_heating: { what: 'Fixed electric space heating', section: '424.4(B)' },
  water_heater: { what: 'A storage water heater of 120 gallons or less', section: '422.13' },
  evse: { what: 'Vehicle charging', section: 'Article 625' },
};

/** Kinds that have no factor of their own; only these are asked how long they run. */
const hasNoFactorOfItsOwn: ReadonlySet<CircuitKind | undefined> = new Set<CircuitKind | undefined>([
  undefined,
  'general',
]);

/** The 125 % of continuous loads is missing, or whether it applies is not known. */
export const continuousLoad = defineLint({
  id: 'continuous-load',
  summary: 'A continuous load lacks its 125 %, or the sheet does not say whether it is continuous.',
  why:
    'A load that runs three hours or more heats its device and conductor through, so both are sized for 125 % of it. Fixed ' +
    'space heating, storage water heaters and vehicle charging count as continuous by rule.',
  sources: ['NEC 210.19, 210.20(A), 215.2, 215.3', 'NEC 422.13; 424.4(B); Article 625'],
  severity: 'warning',
  silent: [
    'The load is said to be not continuous and its kind is not one that a rule counts as continuous.',
    'The answer would be the same with 125 %.',
    'The kind has a factor of its own: motor, hvac with its nameplate, welder, fire_pump and the like.',
    'The assembly is listed for 100 % of its rating: write `allow continuous-load` with that as the reason.',
  ],
  fix: 'Offers both answers, or the rating or `continuous: yes` that the rule asks for; a person chooses, never fix-all.',
  examples: {
    bad: [
      'baseboard = circuit(load: 12.5 A, kind: space_heating, continuous: no, voltage: 240 V)\n',
      'sign = circuit(load: 18 A, kind: general, voltage: 120 V, conductor: 12 AWG Cu THHN, ocpd: 20 A)\n',
    ],
    good: [
      'baseboard = circuit(load: 12.5 A, kind: space_heating, voltage: 240 V)\n',
      'sign = circuit(load: 18 A, kind: general, continuous: no, voltage: 120 V, conductor: 12 AWG Cu THHN, ocpd: 20 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const rule = fact.kind && continuousByRule[fact.kind];
      if (rule && saysNotContinuous(call)) {
        report({
          span: argumentSpan(statement, call, 'continuous'),
          message: `${rule.what} counts as continuous by rule (${cited(fact.edition, rule.section)}), and the sheet says \`continuous: no\`. 125 % of ${figure(fact.loadCurrent)} A is ${figure(fact.loadCurrent * continuousFactor)} A. Write \`continuous: yes\`, or allow this with the reason.`,
          fixes: yesFix(statement, call),
        });
      } else if (
        fact.continuous &&
        (rule || hasNoFactorOfItsOwn.has(fact.kind)) &&
        fact.ocpdGiven &&
        deviceLacksFactor(fact)
      ) {
        reportDevice(statement, call, fact, report);
      } else if (
        !fact.continuous &&
        !fact.continuousGiven &&
        fact.mca === undefined &&
        hasNoFactorOfItsOwn.has(fact.kind) &&
        wouldChange(call, fact)
      ) {
        report({
          span: argumentSpan(statement, call, 'load'),
          severity: 'hint',
          message: `Does this load run three hours or more? Then 125 % of ${figure(fact.loadCurrent)} A, ${figure(fact.loadCurrent * continuousFactor)} A, is required (${fact.edition}: 210.19, 210.20), which ${whatFails(fact)}. ${howToSay(call)}`,
          fixes: ['no', 'yes'].flatMap((answer) =>
            statementFix(statement, call, 'continuous', answer, `State \`continuous: ${answer}\``),
          ),
        });
      }
    }
  },
});

function saysNotContinuous(call: CallRecord): boolean {
  const argument = call.arguments.get('continuous');
  return argument?.given === true && argument.value.kind === 'boolean' && argument.value.value === false;
}

const withFactor = (fact: CircuitFact): number => fact.loadCurrent * continuousFactor;

const deviceLacksFactor = (fact: CircuitFact): boolean =>
  exceeds(fact.smallestOcpd, fact.ocpd) &&
  exceeds(withFactor(fact), fact.ocpd) &&
  !exceeds(fact.loadCurrent, fact.ocpd);

function reportDevice(statement: LintedStatement, call: CallRecord, fact: CircuitFact, report: Report): void {
  report({
    span: argumentSpan(statement, call, 'ocpd'),
    message: `The device is ${figure(fact.ocpd)} A for a continuous load of ${figure(fact.loadCurrent)} A; 125 % of it, ${figure(withFactor(fact))} A, is required (${fact.edition}: 210.20, 215.3). The smallest standard rating is ${figure(fact.smallestOcpd)} A, on a conductor that it suits.`,
    fixes: exceeds(fact.smallestOcpd, largestGeneralDevice(fact)) ? [] : ratingFix(statement, call, fact.smallestOcpd),
  });
}

/** True when what the sheet names, or what was chosen for it, passes without the factor and fails with it. */
function wouldChange({ isImplied }: CallRecord, fact: CircuitFact): boolean {
  const fails = (bound: number, given: boolean) => (given || !isImplied) && exceeds(withFactor(fact), bound);
  return (
    !exceeds(fact.requiredAmpacity, fact.totalAmpacity) &&
    !exceeds(fact.loadCurrent, fact.ocpd) &&
    (fails(fact.totalAmpacity, fact.conductorGiven) || fails(fact.ocpd, fact.ocpdGiven))
  );
}

const howToSay = ({ isImplied }: CallRecord): string =>
  isImplied
    ? 'Say so in a column `continuous`, `yes` or `no` in each row.'
    : 'Say `continuous: yes` or `continuous: no`.';

const whatFails = (fact: CircuitFact): string =>
  exceeds(withFactor(fact), fact.totalAmpacity)
    ? `the conductor's ${figure(fact.totalAmpacity)} A does not carry`
    : `the ${figure(fact.ocpd)} A device does not carry`;

function yesFix(statement: LintedStatement, call: CallRecord): Fix[] {
  const node = argumentNode(statement, call, 'continuous');
  if (node === undefined || statement.tree.kinds[node] !== Node.No) {
    return [];
  }
  const edits = [{ span: spanOf(statement.tree, node), newText: 'yes' }];
  return [{ title: 'Write `continuous: yes`', edits, safe: false }];
}
