import { uncertaintyOf } from './coverage';
import type { Machine, Site } from './machine';
import { Operation } from './operations';

/** The comparison with both sides changed over. */
const turned: Partial<Record<Operation, Operation>> = {
  [Operation.Less]: Operation.Greater,
  [Operation.LessOrEqual]: Operation.GreaterOrEqual,
  [Operation.Greater]: Operation.Less,
  [Operation.GreaterOrEqual]: Operation.LessOrEqual,
};

/**
 * A comparison with a reading over range, of which nothing is known but that it is more than the end of the range. It is
 * settled where the other side lies within the range, and cannot be told beyond.
 */
export class BoundSite implements Site {
  private readonly operation: Operation;

  constructor(
    operation: Operation,
    /** Slot of the end of the range. */
    private readonly end: number,
    /** Slot of the other side; undefined where that is over range, too. */
    private readonly other: number | undefined,
    boundIsLeft: boolean,
    private readonly target: number,
    private readonly written: string,
  ) {
    this.operation = boundIsLeft ? operation : (turned[operation] ?? operation);
  }

  run(machine: Machine): void {
    const { numbers, uncertain } = machine;
    const answer = this.answer(machine);
    uncertain.clear(this.target, 1);
    numbers[this.target] = answer;
    if (answer === 0.5) {
      uncertain.setDoubt(this.target, {
        dominant: `\`${this.written}\``,
        advice: 'reading it on a higher range, or with a meter that reaches further, can settle it',
      });
    }
  }

  private answer({ numbers, uncertain }: Machine): number {
    if (this.other === undefined) {
      return 0.5;
    }
    const value = numbers[this.other];
    const gradient = uncertain.gradient(this.other);
    const most = gradient ? uncertaintyOf(value, gradient).high : value;
    if (most - most !== 0) {
      return Number.NaN;
    }
    if (most > numbers[this.end]) {
      return 0.5;
    }
    const { operation } = this;
    return operation === Operation.Greater || operation === Operation.GreaterOrEqual || operation === Operation.NotEqual
      ? 1
      : 0;
  }
}
