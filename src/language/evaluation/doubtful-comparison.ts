import { uncertaintyOf } from './coverage';
import type { Gradient } from './gradient';
import { combine } from './gradient-sum';
import type { Machine } from './machine';
import { Operation } from './operations';
import type { Source } from './source';
import type { Doubt } from './value';

interface Outcome {
  /** 1 yes, 0 no, 0.5 cannot tell. */
  readonly answer: number;
  readonly doubt?: Doubt;
}

/**
 * A comparison of which a side is uncertain: decided by where the 95 % interval of the difference lies (ILAC-G8, the
 * rule with guard bands). Undefined where the doubt of both sides cancels and the numbers alone decide.
 */
export function doubtfulComparison(machine: Machine, operation: Operation, a: number, b: number): Outcome | undefined {
  const { numbers, uncertain } = machine;
  const gradient = combine(uncertain.gradient(b), 1, uncertain.gradient(a), -1);
  if (!gradient) {
    return undefined;
  }
  const difference = numbers[b] - numbers[a];
  const answer = decide(operation, difference, gradient);
  return answer === 0.5 ? { answer, doubt: doubtOf(operation, difference, gradient) } : { answer };
}

function decide(operation: Operation, difference: number, gradient: Gradient): number {
  const { low, high } = uncertaintyOf(difference, gradient);
  const answer = (isYes: boolean, isNo: boolean) => (isYes ? 1 : isNo ? 0 : 0.5);
  switch (operation) {
    case Operation.Less:
      return answer(low > 0, high <= 0);
    case Operation.LessOrEqual:
      return answer(low >= 0, high < 0);
    case Operation.Greater:
      return answer(high < 0, low >= 0);
    case Operation.GreaterOrEqual:
      return answer(high <= 0, low > 0);
    case Operation.NotEqual:
      return answer(low > 0 || high < 0, false);
    default:
      return answer(false, low > 0 || high < 0);
  }
}

const remedies: Readonly<Record<Source['stated'], string>> = {
  meter: 'reading it again with a finer meter or on a lower range',
  limits: 'measuring it, or finding closer limits for it,',
  standard: 'more readings of it, or a finer meter,',
};

/** What keeps the comparison from yes or no: the largest source, and whether the answer would be there without it. */
function doubtOf(operation: Operation, difference: number, gradient: Gradient): Doubt {
  const [[dominant]] = gradient.bySize();
  const rest = gradient.without(dominant);
  const settles = rest ? decide(operation, difference, rest) !== 0.5 : difference !== 0;
  return {
    dominant: `\`${dominant.name}\``,
    advice: `${remedies[dominant.stated]} ${settles ? 'can settle it' : 'helps most, but cannot settle it alone'}`,
  };
}
