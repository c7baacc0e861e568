import { dimensionless } from '../../units';
import { misfit } from '../checking/arithmetic';
import { describe } from '../checking/describe';
import type { Type } from '../checking/type';
import { anyQuantity, defineMathematics, isQuantity, type MathematicsFunction } from './operation';

const parameters = {
  x: anyQuantity('what to round'),
  step: { ...anyQuantity('what to round to a multiple of: `5 ft`; 1 for a plain number'), optional: true } as const,
};

function rounded([x, step]: readonly Type[]): Type | { readonly problem: string; readonly argument?: number } {
  if (!isQuantity(x)) {
    return { problem: `only a quantity can be rounded; this is ${describe(x)}.` };
  }
  if (x.quantity.kind === 'absolute') {
    return { problem: 'a temperature on a scale has no multiples; subtract a reference first.' };
  }
  if (!step) {
    return x.quantity.dimension === dimensionless
      ? x
      : { problem: `say in what steps, such as \`1 ${x.unit.symbol}\`: this is ${describe(x)}.` };
  }
  return isQuantity(step) && !misfit(x.quantity, step.quantity)
    ? x
    : { problem: `the step is ${describe(step)}, the value ${describe(x)}; they must be alike.`, argument: 1 };
}

/** A quotient within rounding error of a whole number counts as that number: 0.3 m is three steps of 0.1 m. */
const settled = (quotient: number): number => {
  const whole = Math.round(quotient);
  return Math.abs(quotient - whole) <= 1e-12 * Math.max(1, Math.abs(whole)) ? whole : quotient;
};

const inSteps = (way: (x: number) => number) => ({
  kind: 'two' as const,
  compute: (x: number, step: number) => way(settled(x / step)) * step,
  slopes: () => [0, 0] as const,
});

const zeroStep = 'has no value for a step of zero';

export const round: MathematicsFunction = defineMathematics({
  name: 'round',
  summary: 'The nearest multiple of a step; halves go away from zero.',
  parameters,
  infer: rounded,
  gives: 'the nearest multiple',
  undefinedWhere: zeroStep,
  operation: inSteps((x) => Math.sign(x) * Math.round(Math.abs(x))),
  examples: [{ text: 'round(83 ft, 5 ft)', gives: '85 ft' }],
});

export const floor: MathematicsFunction = defineMathematics({
  name: 'floor',
  summary: 'The largest multiple of a step that is not above.',
  parameters,
  infer: rounded,
  gives: 'the multiple below',
  undefinedWhere: zeroStep,
  operation: inSteps(Math.floor),
  examples: [{ text: 'floor(83 ft, 5 ft)', gives: '80 ft' }],
});

export const ceil: MathematicsFunction = defineMathematics({
  name: 'ceil',
  summary: 'The smallest multiple of a step that is not below.',
  parameters,
  infer: rounded,
  gives: 'the multiple above',
  undefinedWhere: zeroStep,
  operation: inSteps(Math.ceil),
  examples: [{ text: 'ceil(81 ft, 5 ft)', gives: '85 ft' }],
});
