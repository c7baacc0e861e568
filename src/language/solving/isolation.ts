import { Operator, type SyntaxTree } from '../syntax/tree';
import { add, call, divide, type Expression, holds, multiply, negate, number, power, subtract } from './expression';
import { type Polynomial, polynomialOf, singlePower } from './polynomial';

/**
 * Turns `left == right` round until `unknown` stands alone. Every formula given may be the one that holds, or none:
 * which do is seen once there are numbers. None at all where it cannot be brought to stand alone.
 */
export function isolate(tree: SyntaxTree, left: Expression, right: Expression, unknown: string): Expression[] {
  const isThere = holds(left, unknown);
  if (isThere === holds(right, unknown)) {
    return isThere ? fromPolynomial(tree, left, right, unknown) : [];
  }
  return isThere ? peel(tree, left, right, unknown) : peel(tree, right, left, unknown);
}

/** Takes over, one after the other, what stands between the unknown and being alone. */
function peel(tree: SyntaxTree, side: Expression, other: Expression, unknown: string): Expression[] {
  switch (side.kind) {
    case 'unknown':
      return [other];
    case 'negated':
      return peel(tree, side.operand, negate(other), unknown);
    case 'converted':
      return peel(tree, side.operand, other, unknown);
    case 'call':
      return peel(tree, side.argument, inverse(side.name, other), unknown);
    case 'binary': {
      const isLeft = holds(side.left, unknown);
      if (isLeft === holds(side.right, unknown)) {
        return fromPolynomial(tree, side, other, unknown);
      }
      const results =
        side.operator === Operator.Power
          ? roots(side, other, isLeft)
          : [opposite(side.operator, other, isLeft ? side.right : side.left, isLeft)];
      return results.flatMap((result) => peel(tree, isLeft ? side.left : side.right, result, unknown));
    }
    default:
      return [];
  }
}

/** What the argument of a function equals when the function's result does. */
const inverse = (name: string, result: Expression): Expression =>
  name === 'sqrt' ? power(result, number(2)) : call(name === 'ln' ? 'exp' : 'ln', result);

/** What the part with the unknown equals once the other operand is taken over. */
function opposite(operator: Operator, result: Expression, operand: Expression, unknownIsLeft: boolean): Expression {
  switch (operator) {
    case Operator.Add:
      return subtract(result, operand);
    case Operator.Subtract:
      return unknownIsLeft ? add(result, operand) : subtract(operand, result);
    case Operator.Multiply:
      return divide(result, operand);
    default:
      return unknownIsLeft ? multiply(result, operand) : divide(operand, result);
  }
}

/** `x^3 == result`, or `2^x == result` where the unknown is in the exponent. */
function roots({ left, right }: Expression & { kind: 'binary' }, result: Expression, unknownIsLeft: boolean) {
  if (!unknownIsLeft) {
    return [divide(call('ln', result), call('ln', left))];
  }
  return right.kind === 'number' && right.value !== 0 ? rootsOfPower(result, right.value) : [];
}

/** What may have this power. A negative number has odd roots, too, but no real power that is a fraction. */
function rootsOfPower(result: Expression, exponent: number): Expression[] {
  const root = (of: Expression) =>
    exponent === 2 ? call('sqrt', of) : exponent === 1 ? of : power(of, divide(number(1), number(exponent)));
  if (!Number.isInteger(exponent) || exponent === 1) {
    return [root(result)];
  }
  return [root(result), negate(root(exponent % 2 === 0 ? result : negate(result)))];
}

/** Where the unknown stands more than once: gathers its powers. */
function fromPolynomial(tree: SyntaxTree, left: Expression, right: Expression, unknown: string): Expression[] {
  const polynomial = polynomialOf(tree, left, right, unknown);
  if (!polynomial) {
    return [];
  }
  const single = singlePower(polynomial);
  if (single) {
    return rootsOfPower(single.value, single.degree);
  }
  return [...polynomial.keys()].every((degree) => degree <= 2) ? fromQuadratic(polynomial) : [];
}

/** `a x^2 + b x + c == 0`; and, should `a` come to zero, the root of what is left. */
function fromQuadratic(polynomial: Polynomial): Expression[] {
  const parts = [0, 1, 2].map((degree) => polynomial.get(degree));
  // Of two ways to write the same, the one whose square has no sign.
  const [c, b, a] = parts[2]?.kind === 'negated' ? parts.map((part) => part && negate(part)) : parts;
  if (!a || !b) {
    return [];
  }
  if (!c) {
    return [divide(negate(b), a), multiply(number(0), divide(b, a))];
  }
  const square = subtract(power(b, number(2)), multiply(multiply(number(4), a), c));
  const root = call('sqrt', square);
  const under = multiply(number(2), a);
  return [divide(add(negate(b), root), under), divide(subtract(negate(b), root), under), divide(negate(c), b)];
}
