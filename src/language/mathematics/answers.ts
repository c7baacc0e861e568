import type { Type } from '../checking/type';
import { booleanType, listOf } from '../checking/types';
import { defineMathematics, itemsOf, type MathematicsFunction, manyAnswers, oneList } from './operation';
import { empty, fold } from './reductions';

/** What all answers come to: `settling` of them settles it, and else one that nobody can tell leaves it open. */
const together = (settling: 0 | 1) => (answers: ArrayLike<number>) => {
  const all = Array.from(answers);
  return all.includes(settling) ? settling : settling === 0 ? fold(Math.min)(all) : fold(Math.max)(all);
};

const givesAnswer = (types: readonly Type[]): Type | { problem: string; argument?: number } => {
  const items = itemsOf(types);
  return 'problem' in items ? items : booleanType;
};

export const all: MathematicsFunction = defineMathematics({
  name: 'all',
  summary: 'Yes where every answer is yes.',
  parameters: { answers: manyAnswers },
  infer: givesAnswer,
  gives: 'yes or no',
  undefinedWhere: empty,
  operation: { kind: 'many', compute: together(0), isAnswer: true },
  examples: [{ text: 'all([2 %, 5 %] <= 3 %)', gives: 'no' }],
});

export const any: MathematicsFunction = defineMathematics({
  name: 'any',
  summary: 'Yes where at least one answer is yes.',
  parameters: { answers: manyAnswers },
  infer: givesAnswer,
  gives: 'yes or no',
  undefinedWhere: empty,
  operation: { kind: 'many', compute: together(1), isAnswer: true },
  examples: [{ text: 'any([2 %, 5 %] > 3 %)', gives: 'yes' }],
});

export const known: MathematicsFunction = defineMathematics({
  name: 'known',
  summary: 'Which items of a list have a value; an empty cell of a schedule has none.',
  parameters: { list: oneList },
  infer: ([type]) =>
    type.kind === 'list'
      ? listOf(booleanType)
      : { problem: 'it asks about each item of a list, such as a column of a schedule.' },
  gives: 'yes or no for each item',
  operation: { kind: 'known' },
  examples: [{ text: 'all(known([3 A, 5 A]))', gives: 'yes' }],
});
