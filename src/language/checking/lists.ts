import { Operator } from '../syntax/tree';
import type { Checker } from './checker';
import { describe } from './describe';
import { check } from './expressions';
import type { Type } from './type';
import { listOf, unknownType } from './types';

/** The type of a list's items; of anything else its own. */
export const itemOf = (type: Type): Type => (type.kind === 'list' ? type.element : type);

/** True for a value of the library, or a list of such: what a bundle holds. */
const isObjects = (type: Type): boolean => itemOf(type).kind === 'object';

/**
 * `3 * object` is so many of it, `a + b` both together: a list, as a raceway holds conductors. Undefined for operands
 * of which no bundle is made.
 */
export function bundleOf(operator: Operator, left: Type, right: Type): Type | undefined {
  const isCount = left.kind === 'quantity' && left.unit.symbol === '';
  if (operator === Operator.Multiply && isCount && isObjects(right)) {
    return listOf(itemOf(right));
  }
  const [a, b] = [itemOf(left), itemOf(right)];
  return operator === Operator.Add && a.kind === 'object' && b.kind === 'object' && a.object.name === b.object.name
    ? listOf(a)
    : undefined;
}

/** `list where answers`: the items for which the answer is yes. */
export function checkWhere(c: Checker, node: number): Type {
  const listNode = c.tree.firstChildren[node];
  const answersNode = c.tree.nextSiblings[listNode];
  const list = check(c, listNode);
  const answers = answersNode < 0 ? unknownType : check(c, answersNode);
  if (list.kind !== 'list') {
    if (list.kind !== 'unknown') {
      const whole = list.kind === 'schedule' ? ' Name one of its columns.' : '';
      c.report(
        'not-a-list',
        listNode,
        `${c.quote(listNode)} is ${describe(list)}: \`where\` picks from a list, such as a column of a schedule.${whole}`,
      );
    }
    return unknownType;
  }
  if (answers.kind !== 'unknown' && !(answers.kind === 'list' && answers.element.kind === 'boolean')) {
    c.report(
      'not-a-condition',
      answersNode,
      `${c.quote(answersNode)} is ${describe(answers)}: \`where\` needs an answer for each item, such as \`${c.text(listNode)} > …\` or \`panel.phase == "A"\`.`,
    );
    return unknownType;
  }
  return answers.kind === 'unknown' ? unknownType : list;
}
