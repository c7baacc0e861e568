import { Node, Operator, type SyntaxTree, textOf } from '../syntax/tree';

/** An expression while equations are turned round. What cannot be turned round stays whole, as it was written. */
export type Expression =
  /** A part as written, with the unknowns that stand in it; `put` holds what takes the place of some of them. */
  | {
      readonly kind: 'written';
      readonly node: number;
      readonly names: ReadonlySet<string>;
      readonly put?: ReadonlyMap<string, Expression>;
    }
  | { readonly kind: 'unknown'; readonly name: string; readonly node: number }
  /** `node` where it was written so. */
  | { readonly kind: 'number'; readonly value: number; readonly node?: number }
  | { readonly kind: 'binary'; readonly operator: Operator; readonly left: Expression; readonly right: Expression }
  | { readonly kind: 'negated'; readonly operand: Expression }
  /** `operand in unit`, of which `node` was written. */
  | { readonly kind: 'converted'; readonly operand: Expression; readonly node: number }
  | { readonly kind: 'call'; readonly name: string; readonly argument: Expression };

const nothing: ReadonlySet<string> = new Set();

/** Functions of one number that can be turned round. */
const invertible: ReadonlySet<string> = new Set(['sqrt', 'ln', 'exp']);

/** Reads a side of an equation. */
export function readExpression(tree: SyntaxTree, node: number, unknowns: ReadonlySet<string>): Expression {
  const { kinds, firstChildren, nextSiblings, operators } = tree;
  const first = firstChildren[node];
  const read = (child: number) => readExpression(tree, child, unknowns);
  if (kinds[node] === Node.Number) {
    return { kind: 'number', value: tree.numbers[node], node };
  }
  const whole = readWhole(tree, node, unknowns);
  if (whole.names.size === 0) {
    return whole;
  }
  switch (kinds[node] as Node) {
    case Node.Name:
      return { kind: 'unknown', name: textOf(tree, node), node };
    case Node.Group:
      return read(first);
    case Node.Convert:
      return { kind: 'converted', operand: read(first), node };
    case Node.Binary: {
      const operator = operators[node] as Operator;
      return operator <= Operator.Power
        ? { kind: 'binary', operator, left: read(first), right: read(nextSiblings[first]) }
        : whole;
    }
    case Node.Unary:
      return operators[node] === Operator.Negate
        ? negate(read(first))
        : operators[node] === Operator.Plus
          ? read(first)
          : whole;
    case Node.Call: {
      const argument = nextSiblings[first];
      const value = argument < 0 ? -1 : firstChildren[argument];
      const isPlain = value >= 0 && nextSiblings[value] < 0 && nextSiblings[argument] < 0;
      const name = textOf(tree, first);
      return isPlain && invertible.has(name) ? { kind: 'call', name, argument: read(value) } : whole;
    }
    default:
      return whole;
  }
}

/** A part that stays as it is written. */
export function readWhole(
  tree: SyntaxTree,
  node: number,
  unknowns: ReadonlySet<string>,
): Expression & { kind: 'written' } {
  const names = new Set<string>();
  const gather = (part: number): void => {
    const text = tree.kinds[part] === Node.Name ? textOf(tree, part) : undefined;
    if (text !== undefined && unknowns.has(text)) {
      names.add(text);
    }
    valueChildren(tree, part).forEach(gather);
  };
  gather(node);
  return { kind: 'written', node, names: names.size > 0 ? names : nothing };
}

/** True when one of the names stands for its value anywhere below a node. */
export function mentions(tree: SyntaxTree, node: number, names: ReadonlySet<string>): boolean {
  if (tree.kinds[node] === Node.Name) {
    return names.has(textOf(tree, node));
  }
  return valueChildren(tree, node).some((child) => mentions(tree, child, names));
}

/** The children of a node that stand for values: not what a call calls, the name of an argument or a record's field. */
export function valueChildren(tree: SyntaxTree, node: number): number[] {
  const { kinds, firstChildren, nextSiblings } = tree;
  const all: number[] = [];
  for (let child = firstChildren[node]; child >= 0; child = nextSiblings[child]) {
    all.push(child);
  }
  switch (kinds[node] as Node) {
    case Node.Call:
      return all.slice(1);
    case Node.Argument:
      return all.slice(-1);
    case Node.Member:
      return all.slice(0, 1);
    default:
      return all;
  }
}

/** True when the unknown stands in the expression. */
export function holds(expression: Expression, name: string): boolean {
  switch (expression.kind) {
    case 'written': {
      const { names, put } = expression;
      return put
        ? (names.has(name) && !put.has(name)) || [...put.values()].some((part) => holds(part, name))
        : names.has(name);
    }
    case 'unknown':
      return expression.name === name;
    case 'number':
      return false;
    case 'binary':
      return holds(expression.left, name) || holds(expression.right, name);
    case 'negated':
    case 'converted':
      return holds(expression.operand, name);
    case 'call':
      return holds(expression.argument, name);
  }
}

/** Puts an expression in a name's place. */
export function substitute(expression: Expression, name: string, by: Expression): Expression {
  const inside = (part: Expression) => substitute(part, name, by);
  switch (expression.kind) {
    case 'written': {
      if (!holds(expression, name)) {
        return expression;
      }
      const put = new Map([...(expression.put ?? [])].map(([key, part]) => [key, inside(part)]));
      if (!put.has(name) && expression.names.has(name)) {
        put.set(name, by);
      }
      return { ...expression, put };
    }
    case 'unknown':
      return expression.name === name ? by : expression;
    case 'number':
      return expression;
    case 'binary':
      return { ...expression, left: inside(expression.left), right: inside(expression.right) };
    case 'negated':
      return negate(inside(expression.operand));
    case 'converted':
      return { ...expression, operand: inside(expression.operand) };
    case 'call':
      return { ...expression, argument: inside(expression.argument) };
  }
}

/** How many leaves an expression has: how long it reads, and how long working with it takes. */
export function sizeOf(expression: Expression): number {
  switch (expression.kind) {
    case 'written':
      return [...(expression.put ?? [])].reduce((sum, [, part]) => sum + sizeOf(part), 1);
    case 'binary':
      return sizeOf(expression.left) + sizeOf(expression.right);
    case 'negated':
    case 'converted':
      return sizeOf(expression.operand);
    case 'call':
      return sizeOf(expression.argument);
    default:
      return 1;
  }
}

export const number = (value: number): Expression => ({ kind: 'number', value });
export const call = (name: string, argument: Expression): Expression => ({ kind: 'call', name, argument });

export const isNumber = (expression: Expression, value: number): boolean =>
  expression.kind === 'number' && expression.value === value;

export function negate(operand: Expression): Expression {
  if (operand.kind === 'binary' && operand.operator === Operator.Subtract) {
    return subtract(operand.right, operand.left);
  }
  return operand.kind === 'negated'
    ? operand.operand
    : operand.kind === 'number'
      ? number(operand.value === 0 ? 0 : -operand.value)
      : { kind: 'negated', operand };
}

export function add(left: Expression, right: Expression): Expression {
  if (left.kind === 'number' && right.kind === 'number') {
    return number(left.value + right.value);
  }
  if (right.kind === 'negated') {
    return subtract(left, right.operand);
  }
  return left.kind === 'negated'
    ? subtract(right, left.operand)
    : { kind: 'binary', operator: Operator.Add, left, right };
}

export function subtract(left: Expression, right: Expression): Expression {
  if (left.kind === 'number' && right.kind === 'number') {
    return number(left.value - right.value);
  }
  return right.kind === 'negated'
    ? add(left, right.operand)
    : { kind: 'binary', operator: Operator.Subtract, left, right };
}

export function multiply(left: Expression, right: Expression): Expression {
  if (left.kind === 'number' && right.kind === 'number') {
    return number(left.value * right.value);
  }
  if (left.kind === 'negated' || right.kind === 'negated') {
    const product = multiply(withoutSign(left), withoutSign(right));
    return left.kind === right.kind ? product : negate(product);
  }
  if (isNumber(left, -1) || isNumber(right, -1)) {
    return negate(isNumber(left, -1) ? right : left);
  }
  return isNumber(left, 1)
    ? right
    : isNumber(right, 1)
      ? left
      : { kind: 'binary', operator: Operator.Multiply, left, right };
}

export function divide(left: Expression, right: Expression): Expression {
  if (left.kind === 'negated' || right.kind === 'negated') {
    const quotient = divide(withoutSign(left), withoutSign(right));
    return left.kind === right.kind ? quotient : negate(quotient);
  }
  if (isNumber(right, -1)) {
    return negate(left);
  }
  return isNumber(right, 1) ? left : { kind: 'binary', operator: Operator.Divide, left, right };
}

export function power(left: Expression, right: Expression): Expression {
  if (left.kind === 'number' && right.kind === 'number' && Number.isFinite(left.value ** right.value)) {
    return number(left.value ** right.value);
  }
  const isEven = right.kind === 'number' && right.value % 2 === 0;
  const base = isEven ? withoutSign(left) : left;
  return isNumber(right, 1) ? left : { kind: 'binary', operator: Operator.Power, left: base, right };
}

const withoutSign = (expression: Expression) => (expression.kind === 'negated' ? expression.operand : expression);
