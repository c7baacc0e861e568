import { Node, Operator, type SyntaxTree, textOf } from '../syntax/tree';

/** An expression while equations are turned round. What holds no unknown stays as it was written. */
export type Expression =
  | { readonly kind: 'written'; readonly node: number }
  | { readonly kind: 'unknown'; readonly name: string; readonly node: number }
  /** `node` where it was written so. */
  | { readonly kind: 'number'; readonly value: number; readonly node?: number }
  | { readonly kind: 'binary'; readonly operator: Operator; readonly left: Expression; readonly right: Expression }
  | { readonly kind: 'negated'; readonly operand: Expression }
  | { readonly kind: 'call'; readonly name: string; readonly argument: Expression };

/** Functions of one value that can be turned round. */
export const invertible = new Set(['sqrt', 'ln', 'exp']);

/** Reads a side of an equation; parts without unknowns, and parts that cannot be turned round, stay whole. */
export function readExpression(tree: SyntaxTree, node: number, unknowns: ReadonlySet<string>): Expression {
  const { kinds, firstChildren, nextSiblings, operators } = tree;
  const first = firstChildren[node];
  const read = (child: number) => readExpression(tree, child, unknowns);
  if (kinds[node] === Node.Number) {
    return { kind: 'number', value: tree.numbers[node], node };
  }
  if (!mentions(tree, node, unknowns)) {
    return { kind: 'written', node };
  }
  switch (kinds[node] as Node) {
    case Node.Name:
      return { kind: 'unknown', name: textOf(tree, node), node };
    case Node.Group:
    case Node.Convert:
      return read(first);
    case Node.Binary: {
      const operator = operators[node] as Operator;
      return operator <= Operator.Power
        ? { kind: 'binary', operator, left: read(first), right: read(nextSiblings[first]) }
        : { kind: 'written', node };
    }
    case Node.Unary:
      return operators[node] === Operator.Negate ? negate(read(first)) : { kind: 'written', node };
    case Node.Call: {
      const argument = nextSiblings[first];
      const value = argument < 0 ? -1 : firstChildren[argument];
      const isPlain = value >= 0 && nextSiblings[value] < 0 && nextSiblings[argument] < 0;
      const name = textOf(tree, first);
      return isPlain && invertible.has(name)
        ? { kind: 'call', name, argument: read(value) }
        : { kind: 'written', node };
    }
    default:
      return { kind: 'written', node };
  }
}

/** True when one of the names stands anywhere below a node. */
function mentions(tree: SyntaxTree, node: number, names: ReadonlySet<string>): boolean {
  if (tree.kinds[node] === Node.Name) {
    return names.has(textOf(tree, node));
  }
  for (let child = tree.firstChildren[node]; child >= 0; child = tree.nextSiblings[child]) {
    if (mentions(tree, child, names)) {
      return true;
    }
  }
  return false;
}

export function holds(tree: SyntaxTree, expression: Expression, name: string): boolean {
  switch (expression.kind) {
    case 'written':
      return mentions(tree, expression.node, new Set([name]));
    case 'unknown':
      return expression.name === name;
    case 'number':
      return false;
    case 'binary':
      return holds(tree, expression.left, name) || holds(tree, expression.right, name);
    case 'negated':
      return holds(tree, expression.operand, name);
    case 'call':
      return holds(tree, expression.argument, name);
  }
}

/** Puts an expression in a name's place; undefined where the name stands inside a part that stays whole. */
export function substitute(
  tree: SyntaxTree,
  expression: Expression,
  name: string,
  by: Expression,
): Expression | undefined {
  const inside = (part: Expression) => substitute(tree, part, name, by);
  switch (expression.kind) {
    case 'written':
      return holds(tree, expression, name) ? undefined : expression;
    case 'unknown':
      return expression.name === name ? by : expression;
    case 'number':
      return expression;
    case 'binary': {
      const left = inside(expression.left);
      const right = inside(expression.right);
      return left && right && { ...expression, left, right };
    }
    case 'negated': {
      const operand = inside(expression.operand);
      return operand && negate(operand);
    }
    case 'call': {
      const argument = inside(expression.argument);
      return argument && { ...expression, argument };
    }
  }
}

export const number = (value: number): Expression => ({ kind: 'number', value });
export const call = (name: string, argument: Expression): Expression => ({ kind: 'call', name, argument });

const is = (expression: Expression, value: number) => expression.kind === 'number' && expression.value === value;

export function negate(operand: Expression): Expression {
  return operand.kind === 'negated'
    ? operand.operand
    : operand.kind === 'number'
      ? number(-operand.value)
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
  if (is(left, -1) || is(right, -1)) {
    return negate(is(left, -1) ? right : left);
  }
  return is(left, 1) ? right : is(right, 1) ? left : { kind: 'binary', operator: Operator.Multiply, left, right };
}

export function divide(left: Expression, right: Expression): Expression {
  if (left.kind === 'negated' || right.kind === 'negated') {
    const quotient = divide(withoutSign(left), withoutSign(right));
    return left.kind === right.kind ? quotient : negate(quotient);
  }
  if (is(right, -1)) {
    return negate(left);
  }
  return is(right, 1) ? left : { kind: 'binary', operator: Operator.Divide, left, right };
}

export function power(left: Expression, right: Expression): Expression {
  return is(right, 1) ? left : { kind: 'binary', operator: Operator.Power, left, right };
}

const withoutSign = (expression: Expression) => (expression.kind === 'negated' ? expression.operand : expression);
