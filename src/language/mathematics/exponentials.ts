import { anyNumber, defineMathematics, givesNumber, type MathematicsFunction } from './operation';

const positive = 'has no value for zero or a negative number';

export const exp: MathematicsFunction = defineMathematics({
  name: 'exp',
  summary: 'The base of natural logarithms to this power.',
  parameters: { x: anyNumber('exponent') },
  infer: givesNumber,
  gives: 'the power',
  operation: { kind: 'one', compute: Math.exp, slope: Math.exp },
  examples: [{ text: 'exp(0)', gives: '1' }],
});

export const ln: MathematicsFunction = defineMathematics({
  name: 'ln',
  summary: 'The natural logarithm.',
  parameters: { x: anyNumber('a number above zero') },
  infer: givesNumber,
  gives: 'the logarithm',
  undefinedWhere: positive,
  operation: { kind: 'one', compute: Math.log, slope: (x) => 1 / x },
  examples: [{ text: 'ln(1)', gives: '0' }],
});

export const log10: MathematicsFunction = defineMathematics({
  name: 'log10',
  summary: 'The logarithm to base 10.',
  parameters: { x: anyNumber('a number above zero') },
  infer: givesNumber,
  gives: 'the logarithm',
  undefinedWhere: positive,
  operation: { kind: 'one', compute: Math.log10, slope: (x) => 1 / (x * Math.LN10) },
  examples: [{ text: 'log10(1000)', gives: '3' }],
});
