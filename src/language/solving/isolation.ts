import { Operator, type SyntaxTree } from '../syntax/tree';
import { add, call, divide, type Expression, holds, multiply, negate, number, power, subtract } from './expression';
import { polynomialOf, singlePower } from './polynomial';

/** An unknown alone on one side. */
export interface Isolated {
  readonly value: Expression;
  /** True when the opposite of the value would do as well. */
  readonly hasOpposite: boolean;
  /** Expressions that must not be negative for the value to hold. */
  readonly notNegative: readonly Expression[];
}

/** Turns `left == right` round until `unknown` stands alone; undefined where that cannot be done. */
export function isolate(tree: SyntaxTree, left: Expression, right: Expression, unknown: string): Isolated | undefined {
  const has = (expression: Expression) => holds(tree, expression, unknown);
  if (has(left) === has(right)) {
    return byPowers(tree, left, right, unknown);
  }
  let [side, other] = has(left) ? [left, right] : [right, left];
  const notNegative: Expression[] = [];
  while (side.kind !== 'unknown') {
    if (side.kind === 'written') {
      return undefined;
    }
    if (side.kind === 'negated') {
      [side, other] = [side.operand, negate(other)];
    } else if (side.kind === 'call') {
      if (side.name === 'sqrt') {
        notNegative.push(other);
      }
      other = side.name === 'sqrt' ? power(other, number(2)) : call(side.name === 'ln' ? 'exp' : 'ln', other);
      side = side.argument;
    } else if (side.kind === 'binary') {
      const isLeft = has(side.left);
      if (isLeft === has(side.right)) {
        const found = byPowers(tree, side, other, unknown);
        return found && { ...found, notNegative };
      }
      if (side.operator === Operator.Power) {
        const found = byPowers(tree, side, other, unknown);
        if (found) {
          return { ...found, notNegative };
        }
        const exponent: Expression = side.right;
        if (!isLeft || exponent.kind !== 'number' || !isOdd(exponent.value)) {
          return undefined;
        }
        other = power(other, divide(number(1), exponent));
      } else {
        other = opposite(side.operator, other, isLeft ? side.right : side.left, isLeft);
      }
      side = isLeft ? side.left : side.right;
    } else {
      return undefined;
    }
  }
  return { value: other, hasOpposite: false, notNegative };
}

const isOdd = (value: number) => Math.abs(value % 2) === 1;

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

/** Where the unknown stands more than once: gathers its powers, and takes the root of the only one there is. */
function byPowers(tree: SyntaxTree, left: Expression, right: Expression, unknown: string): Isolated | undefined {
  const polynomial = polynomialOf(tree, left, right, unknown);
  const found = polynomial && singlePower(polynomial);
  if (!found) {
    return undefined;
  }
  const { degree, value } = found;
  const root =
    degree === 1 ? value : degree === 2 ? call('sqrt', value) : power(value, divide(number(1), number(degree)));
  return { value: root, hasOpposite: degree % 2 === 0, notNegative: [] };
}
