import { figure } from '../../functions';
import { children, Node, Operator, type SyntaxTree } from '../../language';
import { argumentNode, argumentSpan, ungrouped } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { ratingFix } from '../device-fixes';
import { cited } from '../editions';
import { resolved } from '../readings';
import { callNodes } from '../statement-kinds';
import { wattDimension, writtenBase } from '../written-values';

/** Largest branch circuit, in amperes, that two or more heating outlets may share. */
const largestShared = 30;

/** Several heaters on a branch circuit above 30 A. */
export const sharedHeatingBranch = defineLint({
  id: 'shared-heating-branch',
  summary: 'Several heaters share a branch circuit above 30 A.',
  why:
    'A branch circuit that feeds two or more fixed space heaters is rated at most 30 A, so that the small conductors and ' +
    'terminals inside each heater stand behind a device that protects them.',
  sources: ['NEC 424.4(A)'],
  severity: 'warning',
  silent: [
    'One heater has the circuit to itself, with its blower or without.',
    'The device is 30 A or less.',
    'It is infrared heating outside dwellings on 40 A or 50 A: write `allow shared-heating-branch` with that as the reason.',
  ],
  fix: 'Offers 30 A, where it carries the load; a person chooses, never fix-all.',
  examples: {
    bad: [
      'heaters = circuit(load: 3 * 1500 W, kind: space_heating, voltage: 120 V, conductor: 6 AWG Cu THHN, ocpd: 50 A)\n',
    ],
    good: [
      'heaters = circuit(load: 3 * 1500 W, kind: space_heating, voltage: 240 V, conductor: 10 AWG Cu THHN, ocpd: 25 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const load = argumentNode(statement, call, 'load');
      if (fact.kind !== 'space_heating' || load === undefined || !exceeds(fact.ocpd, largestShared)) {
        continue;
      }
      const place = resolved({ ...statement, node: load });
      const count = outletsIn(place.tree, place.node);
      if (count > 1) {
        report({
          span: argumentSpan(statement, call, fact.ocpdGiven ? 'ocpd' : 'load'),
          message: `${count} heaters share a ${figure(fact.ocpd)} A branch circuit; two or more may share at most ${largestShared} A (${cited(fact.edition, '424.4(A)')}). Part them between circuits.`,
          fixes: exceeds(fact.smallestOcpd, largestShared) ? [] : ratingFix(statement, call, largestShared),
        });
      }
    }
  },
});

/** How many heaters a load adds up: `3 * 1500 W` is three, `1.5 kW + 2 kW` two. Only watts are heaters: amperes may be a blower. */
function outletsIn(tree: SyntaxTree, given: number): number {
  const node = ungrouped(tree, given);
  if (tree.kinds[node] === Node.Quantity) {
    return writtenBase(tree, node)?.dimension === wattDimension ? 1 : 0;
  }
  if (tree.kinds[node] !== Node.Binary) {
    return 0;
  }
  const [left, right] = [...children(tree, node)];
  if (tree.operators[node] === Operator.Add) {
    return outletsIn(tree, left) + outletsIn(tree, right);
  }
  const [factor, each] = tree.kinds[left] === Node.Number ? [left, right] : [right, left];
  const isCount = tree.operators[node] === Operator.Multiply && Number.isInteger(tree.numbers[factor]);
  return isCount && tree.kinds[factor] === Node.Number ? tree.numbers[factor] * outletsIn(tree, each) : 0;
}
