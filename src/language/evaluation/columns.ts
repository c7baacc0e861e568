import { less, type Machine } from './machine';
import { instructionLength, Operation } from './operations';

/** Whether instructions do nothing but arithmetic, so that they may be run on columns. */
export function isArithmetic(machine: Machine, start: number, end: number): boolean {
  for (let at = start; at < end; at += instructionLength) {
    const operation = machine.code[at] as Operation;
    if (operation > Operation.Not) {
      return false;
    }
  }
  return true;
}

/**
 * A machine's slots as columns, one number for each of many cases. An instruction is taken up once and done for all
 * cases in a row, so that a case costs no more than its arithmetic.
 */
export class Columns {
  private readonly columns: (Float64Array | undefined)[] = [];

  constructor(
    private readonly machine: Machine,
    readonly size: number,
  ) {}

  /** The column of a slot; the slot's own number for every case until it is written. */
  column(slot: number): Float64Array {
    let column = this.columns[slot];
    if (!column) {
      column = new Float64Array(this.size).fill(this.machine.numbers[slot]);
      this.columns[slot] = column;
    }
    return column;
  }

  /** Makes a column that lies elsewhere the slot's own. */
  lay(slot: number, column: Float64Array): void {
    this.columns[slot] = column;
  }

  /** Runs arithmetic for the first `count` cases; the same results as the machine has for each. */
  run(start: number, end: number, count: number): void {
    const { code } = this.machine;
    for (let at = start; at < end; at += instructionLength) {
      const operation = code[at] as Operation;
      const target = this.column(code[at + 1]);
      const a = this.column(code[at + 2]);
      if (operation === Operation.One) {
        const compute = this.machine.functionsOfOne[code[at + 3]];
        for (let i = 0; i < count; i++) {
          target[i] = compute(a[i]) + (a[i] - a[i]);
        }
      } else {
        operate(operation, target, a, isUnary(operation) ? a : this.column(code[at + 3]), count);
      }
    }
  }
}

const isUnary = (operation: Operation): boolean =>
  operation === Operation.Copy || operation === Operation.Negate || operation === Operation.Not;

/** One operation on whole columns: the same arithmetic as the machine does number by number. */
function operate(operation: Operation, r: Float64Array, a: Float64Array, b: Float64Array, count: number): void {
  switch (operation) {
    case Operation.Copy:
      r.set(a.subarray(0, count));
      return;
    case Operation.Add:
      for (let i = 0; i < count; i++) {
        r[i] = a[i] + b[i];
      }
      return;
    case Operation.Subtract:
      for (let i = 0; i < count; i++) {
        r[i] = a[i] - b[i];
      }
      return;
    case Operation.Multiply:
      for (let i = 0; i < count; i++) {
        r[i] = a[i] * b[i];
      }
      return;
    case Operation.Divide:
      for (let i = 0; i < count; i++) {
        r[i] = a[i] / b[i] + (b[i] - b[i]);
      }
      return;
    default: {
      const one = byCase[operation]!;
      for (let i = 0; i < count; i++) {
        r[i] = one(a[i], b[i]);
      }
    }
  }
}

const byCase: Partial<Record<Operation, (a: number, b: number) => number>> = {
  [Operation.Power]: (a, b) => a ** b + (a - a),
  [Operation.Negate]: (a) => -a,
  [Operation.Less]: less,
  [Operation.LessOrEqual]: (a, b) => 1 - less(b, a),
  [Operation.Greater]: (a, b) => less(b, a),
  [Operation.GreaterOrEqual]: (a, b) => 1 - less(a, b),
  [Operation.Equal]: (a, b) => 1 - less(a, b) - less(b, a),
  [Operation.NotEqual]: (a, b) => less(a, b) + less(b, a),
  [Operation.And]: (a, b) => (a === 0 || b === 0 ? 0 : Math.min(a, b)),
  [Operation.Or]: (a, b) => (a === 1 || b === 1 ? 1 : Math.max(a, b)),
  [Operation.Not]: (a) => 1 - a,
};
