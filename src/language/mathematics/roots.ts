import { dimensionless, type QuantityType, quantityType, raiseDimension, unitFor } from '../../units';
import { describe } from '../checking/describe';
import type { Type } from '../checking/type';
import { plainNumberType, quantityOf } from '../checking/types';
import { anyQuantity, defineMathematics, givesNumber, isQuantity, type MathematicsFunction } from './operation';

const rooted = new Map<QuantityType, Type>();

/** The type of a square root; its unit is composed anew, except for a number. */
function squareRoot(types: readonly Type[]): Type | { readonly problem: string } {
  const [type] = types;
  if (!isQuantity(type) || type.quantity.kind === 'absolute') {
    return { problem: `a square root needs a quantity; this is ${describe(type)}.` };
  }
  if (type.quantity.dimension === dimensionless) {
    return plainNumberType();
  }
  let root = rooted.get(type.quantity);
  if (!root) {
    const quantity = quantityType(raiseDimension(type.quantity.dimension, 0.5));
    root = quantityOf(quantity, unitFor(quantity, 'US'), true);
    rooted.set(type.quantity, root);
  }
  return root;
}

export const sqrt: MathematicsFunction = defineMathematics({
  name: 'sqrt',
  summary: 'The square root.',
  parameters: { x: anyQuantity('what to take the root of') },
  infer: squareRoot,
  gives: 'the root, not negative',
  undefinedWhere: 'has no value for a negative number',
  operation: { kind: 'one', compute: Math.sqrt, slope: (x) => 0.5 / Math.sqrt(x) },
  examples: [{ text: 'sqrt((3 V)^2 + (4 V)^2)', gives: '5 V' }],
});

export const abs: MathematicsFunction = defineMathematics({
  name: 'abs',
  summary: 'The size without its sign.',
  parameters: { x: anyQuantity('any quantity but a temperature on a scale') },
  infer: ([type]) =>
    isQuantity(type) && type.quantity.kind === 'absolute'
      ? { problem: 'a temperature on a scale has no size without its sign; subtract a reference first.' }
      : type,
  gives: 'the size',
  operation: { kind: 'one', compute: Math.abs, slope: (x) => Math.sign(x) },
  examples: [{ text: 'abs(3 A - 5 A)', gives: '2 A' }],
});

export const sign: MathematicsFunction = defineMathematics({
  name: 'sign',
  summary: '1, 0 or -1.',
  parameters: { x: anyQuantity('any quantity') },
  infer: givesNumber,
  gives: '1 for positive, -1 for negative, 0 for zero',
  operation: { kind: 'one', compute: Math.sign, slope: () => 0 },
  examples: [{ text: 'sign(3 A - 5 A)', gives: '-1' }],
});
