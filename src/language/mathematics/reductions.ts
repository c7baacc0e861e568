import { commonType } from '../checking/composites';
import { describe } from '../checking/describe';
import type { Type } from '../checking/type';
import { plainNumberType } from '../checking/types';
import {
  defineMathematics,
  isQuantity,
  itemsOf,
  type MathematicsFunction,
  manyQuantities,
  manyValues,
} from './operation';

/** The one type of all items. */
function alike(types: readonly Type[]): Type | { readonly problem: string; readonly argument: number } {
  const items = itemsOf(types);
  if ('problem' in items) {
    return items;
  }
  let common = items[0];
  for (const [i, item] of items.entries()) {
    const next = commonType(common, item);
    if (!next) {
      return {
        problem: `the first value is ${describe(common)}, this one is ${describe(item)}; all must be alike.`,
        argument: i,
      };
    }
    common = next;
  }
  return common;
}

function summable(types: readonly Type[]): ReturnType<typeof alike> {
  const type = alike(types);
  return 'kind' in type && isQuantity(type) && type.quantity.kind === 'absolute'
    ? { problem: 'temperatures on a scale do not add; take their mean, or add differences in K.', argument: 0 }
    : type;
}

export const fold = (step: (a: number, b: number) => number) => (values: ArrayLike<number>) => {
  let result = values[0];
  for (let i = 1; i < values.length; i++) {
    result = step(result, values[i]);
  }
  return result;
};

const add = fold((a, b) => a + b);

/** Nothing adds up to nothing: a phase without loads carries 0. */
const sumOf = (values: ArrayLike<number>) => (values.length === 0 ? 0 : add(values));

/** The slopes of a result that is one of the values: 1 for that one. */
const ofTheOne =
  (choose: (a: number, b: number) => number) =>
  (values: ArrayLike<number>): ArrayLike<number> => {
    const slopes = new Float64Array(values.length);
    const chosen = Array.from(values).indexOf(fold(choose)(values));
    if (chosen >= 0) {
      slopes[chosen] = 1;
    }
    return slopes;
  };
const each =
  (slope: (count: number) => number) =>
  (values: ArrayLike<number>): ArrayLike<number> =>
    new Float64Array(values.length).fill(slope(values.length));

const parameters = { values: manyQuantities };
/** Why a function over a list may have no value. */
export const empty = 'has no value for an empty list';

export const min: MathematicsFunction = defineMathematics({
  name: 'min',
  summary: 'The smallest of several values or of a list.',
  parameters,
  infer: alike,
  gives: 'the smallest',
  undefinedWhere: empty,
  operation: { kind: 'many', compute: fold(Math.min), slopes: ofTheOne(Math.min) },
  examples: [{ text: 'min(3 A, 5 A, 4 A)', gives: '3 A' }],
});

export const max: MathematicsFunction = defineMathematics({
  name: 'max',
  summary: 'The largest of several values or of a list.',
  parameters,
  infer: alike,
  gives: 'the largest',
  undefinedWhere: empty,
  operation: { kind: 'many', compute: fold(Math.max), slopes: ofTheOne(Math.max) },
  examples: [{ text: 'max([3 A, 5 A])', gives: '5 A' }],
});

export const sum: MathematicsFunction = defineMathematics({
  name: 'sum',
  summary: 'The sum of several values or of a list.',
  parameters,
  infer: summable,
  gives: 'the sum',
  operation: { kind: 'many', compute: sumOf, slopes: each(() => 1) },
  examples: [{ text: 'sum([3 A, 5 A])', gives: '8 A' }],
});

export const mean: MathematicsFunction = defineMathematics({
  name: 'mean',
  summary: 'The arithmetic mean of several values or of a list.',
  parameters,
  infer: alike,
  gives: 'the mean',
  undefinedWhere: empty,
  operation: { kind: 'many', compute: (values) => add(values) / values.length, slopes: each((n) => 1 / n) },
  examples: [{ text: 'mean(3 A, 5 A)', gives: '4 A' }],
});

export const count: MathematicsFunction = defineMathematics({
  name: 'count',
  summary: 'How many values there are.',
  parameters: { values: manyValues },
  infer: (types) => {
    const items = itemsOf(types);
    return 'problem' in items ? items : plainNumberType();
  },
  gives: 'the number of values',
  operation: { kind: 'many', compute: (values) => values.length },
  examples: [{ text: 'count([3 A, 5 A])', gives: '2' }],
});
