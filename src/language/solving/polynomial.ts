import { Operator, type SyntaxTree } from '../syntax/tree';
import { add, divide, type Expression, holds, isNumber, multiply, negate, number, power, sizeOf } from './expression';
import { isAlwaysZero } from './identity';

/** Coefficient by degree of the unknown. */
export type Polynomial = ReadonlyMap<number, Expression>;

/** One polynomial over another. */
interface Fraction {
  readonly over: Polynomial;
  readonly under: Polynomial;
}

/** Higher powers are left to the search between bounds. */
const largestPower = 4;
/** Longer coefficients are not worked with: nobody could read them, and time must stay bounded. */
const longest = 200;
const one: Polynomial = new Map([[0, number(1)]]);

/**
 * `left - right`, brought over one denominator and that dropped, as a polynomial of the unknown, without the powers that
 * cancel out; or undefined.
 */
export function polynomialOf(
  tree: SyntaxTree,
  left: Expression,
  right: Expression,
  unknown: string,
): Polynomial | undefined {
  const a = fractionOf(tree, left, unknown);
  const b = fractionOf(tree, right, unknown);
  const whole = a && b && difference(a, b)?.over;
  return whole && new Map([...whole].filter(([degree, part]) => degree === 0 || !isAlwaysZero(tree, part)));
}

function fractionOf(tree: SyntaxTree, expression: Expression, unknown: string): Fraction | undefined {
  if (!holds(expression, unknown)) {
    return { over: new Map([[0, expression]]), under: one };
  }
  switch (expression.kind) {
    case 'unknown':
      return { over: new Map([[1, number(1)]]), under: one };
    case 'negated': {
      const inner = fractionOf(tree, expression.operand, unknown);
      return inner && { over: sum(new Map(), inner.over, true), under: inner.under };
    }
    case 'converted':
      return fractionOf(tree, expression.operand, unknown);
    case 'binary':
      return binary(tree, expression, unknown);
    default:
      return undefined;
  }
}

function binary(
  tree: SyntaxTree,
  { operator, left, right }: Extract<Expression, { kind: 'binary' }>,
  unknown: string,
): Fraction | undefined {
  const a = fractionOf(tree, left, unknown);
  if (operator === Operator.Power) {
    const exponent = right.kind === 'number' ? right.value : 0;
    if (!a || !Number.isInteger(exponent) || exponent < 1 || exponent > largestPower) {
      return undefined;
    }
    return bounded(raised(a.over, exponent), raised(a.under, exponent));
  }
  const b = fractionOf(tree, right, unknown);
  if (!a || !b) {
    return undefined;
  }
  switch (operator) {
    case Operator.Multiply:
      return bounded(product(a.over, b.over), product(a.under, b.under));
    case Operator.Divide:
      return bounded(product(a.over, b.under), product(a.under, b.over));
    case Operator.Subtract:
      return difference(a, b);
    default:
      return difference(a, { over: sum(new Map(), b.over, true), under: b.under });
  }
}

/** Over the one denominator where both have it, so that what is shown stays short. */
function difference(a: Fraction, b: Fraction): Fraction | undefined {
  return isSame(a.under, b.under)
    ? bounded(sum(a.over, b.over, true), a.under)
    : bounded(sum(product(a.over, b.under), product(b.over, a.under), true), product(a.under, b.under));
}

/** A fraction, unless it has grown too large. */
const bounded = (over: Polynomial, under: Polynomial): Fraction | undefined =>
  [over, under].every((polynomial) =>
    [...polynomial].every(([degree, coefficient]) => degree <= largestPower && sizeOf(coefficient) <= longest),
  )
    ? { over, under }
    : undefined;

const isSame = (a: Polynomial, b: Polynomial): boolean =>
  a.size === b.size && [...a].every(([degree, coefficient]) => b.get(degree) === coefficient);

function sum(a: Polynomial, b: Polynomial, isDifference: boolean): Polynomial {
  const result = new Map(a);
  for (const [degree, coefficient] of b) {
    const signed = isDifference ? negate(coefficient) : coefficient;
    const before = result.get(degree);
    result.set(degree, before ? add(before, signed) : signed);
  }
  return withoutZeros(result);
}

function product(a: Polynomial, b: Polynomial): Polynomial {
  if (a === one || b === one) {
    return a === one ? b : a;
  }
  const result = new Map<number, Expression>();
  for (const [i, x] of a) {
    for (const [j, y] of b) {
      const before = result.get(i + j);
      const term = multiply(x, y);
      result.set(i + j, before ? add(before, term) : term);
    }
  }
  return withoutZeros(result);
}

function raised(base: Polynomial, exponent: number): Polynomial {
  if (base === one || exponent === 1) {
    return base;
  }
  if (base.size === 1) {
    const [[degree, coefficient]] = base;
    return new Map([
      [degree * exponent, isNumber(coefficient, 1) ? coefficient : power(coefficient, number(exponent))],
    ]);
  }
  let result = base;
  for (let i = 1; i < exponent; i++) {
    result = product(result, base);
  }
  return result;
}

/** A constant of zero stays: an unknown may be just that. */
const withoutZeros = (polynomial: Polynomial): Polynomial =>
  new Map([...polynomial].filter(([degree, coefficient]) => degree === 0 || !isNumber(coefficient, 0)));

/** `x^degree = value` when the polynomial has one power of the unknown beside its constant term; else undefined. */
export function singlePower(polynomial: Polynomial): { degree: number; value: Expression } | undefined {
  const constant = polynomial.get(0);
  const rest = [...polynomial].filter(([degree]) => degree !== 0);
  if (rest.length !== 1 || !constant) {
    return undefined;
  }
  const [[degree, coefficient]] = rest;
  // Of two ways to write the same, the one that begins without a sign.
  const value =
    coefficient.kind === 'negated' ? divide(constant, coefficient.operand) : divide(negate(constant), coefficient);
  return { degree, value };
}
