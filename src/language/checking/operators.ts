import { dimensionless } from '../../units';
import { Node, Operator, type SyntaxTree } from '../syntax/tree';
import { misfit } from './arithmetic';
import { type Checker, replacing } from './checker';
import { describe } from './describe';
import { check } from './expressions';
import { bundleOf, itemOf } from './lists';
import { reachOf, reportOverRange } from './over-range';
import { reportMisfit, reportTemperatureFactor } from './sums';
import type { Type } from './type';
import { booleanType, listOf, type QuantityOf, unknownType } from './types';

export function checkBinary(c: Checker, node: number): Type {
  const operator = c.tree.operators[node] as Operator;
  const leftNode = c.tree.firstChildren[node];
  const rightNode = c.tree.nextSiblings[leftNode];
  const left = check(c, leftNode);
  if (operator <= Operator.Power && left.kind === 'quantity') {
    const right = check(c, rightNode);
    // Two quantities, as nearly everywhere: neither lists nor bundles.
    return right.kind === 'quantity'
      ? checkArithmetic(c, node, operator, left, right)
      : combine(c, node, operator, left, right);
  }
  if (operator === Operator.And || operator === Operator.Or) {
    return checkLogic(c, left, leftNode, check(c, rightNode), rightNode);
  }
  const isComparison = operator >= Operator.Equal && operator <= Operator.GreaterOrEqual;
  const word = itemOf(left);
  if (isComparison && word.kind === 'choice' && word.words.includes(c.text(rightNode))) {
    c.meaning.types[rightNode] = word; // The bare word of a choice, such as a metal.
    return overItems(left, word, checkComparison(c, node, operator, word, word));
  }
  return combine(c, node, operator, left, check(c, rightNode));
}

/** What an operator gives for operands of any types. */
function combine(c: Checker, node: number, operator: Operator, left: Type, right: Type): Type {
  const isComparison = operator >= Operator.Equal && operator <= Operator.GreaterOrEqual;
  if (left.kind === 'unknown' || right.kind === 'unknown') {
    return isComparison && !isHalf(c, node) ? booleanType : unknownType;
  }
  const bundle = isComparison ? undefined : bundleOf(operator, left, right);
  return bundle ?? overItems(left, right, checkItems(c, node, operator, itemOf(left), itemOf(right)));
}

/** True where one side could not be read. */
function isHalf(c: Checker, node: number): boolean {
  const { kinds, firstChildren, nextSiblings } = c.tree;
  const left = firstChildren[node];
  return kinds[left] === Node.Error || kinds[nextSiblings[left]] === Node.Error;
}

/** What an operator gives for two values, or for each two items where a side is a list. */
function checkItems(c: Checker, node: number, operator: Operator, left: Type, right: Type): Type {
  if (operator >= Operator.Equal && operator <= Operator.GreaterOrEqual) {
    return checkComparison(c, node, operator, left, right);
  }
  return left.kind === 'quantity' && right.kind === 'quantity'
    ? checkArithmetic(c, node, operator, left, right)
    : reportOperand(c, node, left, right);
}

/** A list of results where an operand is a list, else the one result. */
const overItems = (left: Type, right: Type, result: Type): Type =>
  result.kind !== 'unknown' && (left.kind === 'list' || right.kind === 'list') ? listOf(result) : result;

function checkArithmetic(c: Checker, node: number, operator: Operator, left: QuantityOf, right: QuantityOf): Type {
  const { arithmetic } = c.context;
  if (operator === Operator.Power) {
    return checkPower(c, node, left, right);
  }
  const result =
    operator === Operator.Multiply
      ? arithmetic.product(left, right)
      : operator === Operator.Divide
        ? arithmetic.quotient(left, right)
        : operator === Operator.Add
          ? arithmetic.sum(left, right)
          : arithmetic.difference(left, right);
  if (typeof result === 'string') {
    reportMisfit(c, node, left, right, result);
    return unknownType;
  }
  return result;
}

function checkPower(c: Checker, node: number, left: QuantityOf, right: QuantityOf): Type {
  const exponentNode = c.tree.nextSiblings[c.tree.firstChildren[node]];
  if (right.quantity.dimension !== dimensionless) {
    c.report(
      'wrong-exponent',
      exponentNode,
      `${c.quote(exponentNode)} is ${describe(right)}: an exponent is a plain number.`,
    );
    return unknownType;
  }
  if (left.quantity.kind === 'absolute') {
    reportTemperatureFactor(c, node);
    return unknownType;
  }
  const exponent = constantOf(c, exponentNode);
  if (left.quantity.dimension === dimensionless) {
    return c.context.arithmetic.power(left, exponent ?? 2); // A number to any power is a number.
  }
  if (exponent === undefined) {
    c.report(
      'wrong-exponent',
      exponentNode,
      `${c.quote(exponentNode)} must stand there as a number, because the unit of the result hangs on it: \`x^2\`.`,
    );
    return unknownType;
  }
  return c.context.arithmetic.power(left, exponent);
}

/** The value of an expression of plain literals, or undefined. */
function constantOf(c: Checker, node: number): number | undefined {
  const inner = c.ungroup(node);
  const { kinds, numbers, operators, firstChildren, nextSiblings } = c.tree;
  const first = firstChildren[inner];
  switch (kinds[inner]) {
    case Node.Number:
      return numbers[inner];
    case Node.Unary: {
      const operand = constantOf(c, first);
      return operand === undefined || operators[inner] === Operator.Not
        ? undefined
        : operators[inner] === Operator.Negate
          ? -operand
          : operand;
    }
    case Node.Binary: {
      const left = constantOf(c, first);
      const right = constantOf(c, nextSiblings[first]);
      return operators[inner] === Operator.Divide && left !== undefined && right ? left / right : undefined;
    }
    default:
      return undefined;
  }
}

function checkComparison(c: Checker, node: number, operator: Operator, left: Type, right: Type): Type {
  const isEquality = operator === Operator.Equal || operator === Operator.NotEqual;
  const [a, b] = [reachOf(left), reachOf(right)];
  if (a && b) {
    const problem = misfit(a.quantity, b.quantity);
    if (problem) {
      reportMisfit(c, node, a, b, problem);
    }
    return booleanType;
  }
  const isWord = (type: Type) => type.kind === 'text' || type.kind === 'choice';
  const alike =
    (isWord(left) && isWord(right)) ||
    (left.kind === 'boolean' && right.kind === 'boolean') ||
    (left.kind === 'object' && right.kind === 'object' && left.object.name === right.object.name);
  const leftNode = c.tree.firstChildren[node];
  const rightNode = c.tree.nextSiblings[leftNode];
  if (!alike && isChained(c.tree, node)) {
    return booleanType; // That a third side follows is what is wrong, and it has been said.
  }
  if (!alike) {
    c.report(
      'unlike-values',
      node,
      `${c.quote(leftNode)} is ${describe(left)}, ${c.quote(rightNode)} is ${describe(right)}: only like values compare.`,
    );
  } else if (!isEquality) {
    const because = left.kind === 'object' ? left.object.unordered : undefined;
    c.report(
      'no-order',
      node,
      `${c.quote(leftNode)} is ${describe(left)}: \`<\` and \`>\` do not apply. ${because ?? 'Compare with `==` or `!=`.'}`,
    );
  }
  return booleanType;
}

const isChained = ({ diagnostics, starts, ends }: SyntaxTree, node: number): boolean =>
  diagnostics.some(
    ({ code, span }) => code === 'chained-comparison' && span.start >= starts[node] && span.end <= ends[node],
  );

function checkLogic(c: Checker, left: Type, leftNode: number, right: Type, rightNode: number): Type {
  for (const [type, node] of [
    [left, leftNode],
    [right, rightNode],
  ] as const) {
    expectBoolean(c, itemOf(type), node, '`and` and `or` join answers of yes or no, such as comparisons');
  }
  return overItems(left, right, booleanType);
}

/** False, with a report, when `type` is known and is no answer of yes or no. */
export function expectBoolean(c: Checker, type: Type, node: number, why: string): boolean {
  if (type.kind === 'list' && type.element.kind === 'boolean') {
    const all = `all(${c.text(node)})`;
    c.report(
      'many-answers',
      node,
      `${c.quote(node)} answers for each item of a list. Write \`all(…)\` for a yes where every answer is yes, \`any(…)\` where one is enough.`,
      { fixes: [replacing('Ask whether all are so', c.span(node), all)] },
    );
    return false;
  }
  if (type.kind !== 'boolean' && type.kind !== 'unknown') {
    c.report('not-a-comparison', node, `${c.quote(node)} is ${describe(type)}: ${why}.`);
    return false;
  }
  return true;
}

function reportOperand(c: Checker, node: number, left: Type, right: Type): Type {
  const leftNode = c.tree.firstChildren[node];
  const [culprit, type] = left.kind === 'quantity' ? [c.tree.nextSiblings[leftNode], right] : [leftNode, left];
  if (type.kind === 'bound') {
    reportOverRange(c, culprit);
    return unknownType;
  }
  const advice =
    type.kind === 'record' || type.kind === 'schedule'
      ? ` Name one of its ${type.kind === 'record' ? 'fields' : 'columns'}, such as \`${c.text(culprit)}.${firstOf(type)}\`.`
      : type.kind === 'text' && c.locals?.has(c.text(culprit))
        ? ' Bare words in a schedule are text; in brackets, `(name)`, a cell takes the value of that name.'
        : '';
  c.report(
    'not-a-quantity',
    culprit,
    `${c.quote(culprit)} is ${describe(type)}: arithmetic needs a quantity.${advice}`,
  );
  return unknownType;
}

const firstOf = (type: Extract<Type, { kind: 'record' | 'schedule' }>): string =>
  (type.kind === 'record' ? type.fields : type.columns).keys().next().value ?? '…';

export function checkUnary(c: Checker, node: number): Type {
  const operand = c.tree.firstChildren[node];
  const whole = check(c, operand);
  const type = itemOf(whole);
  if (c.tree.operators[node] === Operator.Not) {
    expectBoolean(c, type, operand, '`not` turns an answer of yes or no');
    return overItems(whole, whole, booleanType);
  }
  if (type.kind === 'unknown') {
    return unknownType;
  }
  if (type.kind !== 'quantity') {
    c.report('not-a-quantity', operand, `${c.quote(operand)} is ${describe(type)}: a sign needs a quantity.`);
    return unknownType;
  }
  // The sign of a literal is part of it: -10 °C is ten degrees below zero.
  if (type.quantity.kind === 'absolute' && c.tree.kinds[operand] !== Node.Quantity) {
    reportTemperatureFactor(c, node);
    return unknownType;
  }
  return whole;
}
