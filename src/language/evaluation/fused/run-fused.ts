import type { Machine } from '../machine';

/** What an instruction does first: an operation, or taking a number with its object as it is. */
export enum First {
  Multiply,
  Add,
  Divide,
  Subtract,
  Negate,
  Copy,
}

/** What it does with the result; `SubtractFrom` takes it from another number, `DivideInto` divides another number by it. */
export enum Second {
  Nothing,
  Add,
  Multiply,
  Subtract,
  SubtractFrom,
  Divide,
  DivideInto,
}

/**
 * The first integer of an instruction. Three slots follow: both operands of the first operation, and the other operand of
 * the second. Few integers, because reading them is most of the work.
 */
export const headOf = (first: First, second: Second, target: number): number => first | (second << 3) | (target << 6);

const length = 4;

/**
 * Runs fused code: the machine's arithmetic, number by number, in the same order. A division keeps a divisor that is not
 * finite from giving a clean zero. Asks step by step and takes no jump by a table: a processor foresees the answers to
 * many small questions well, and one jump to thirty places well in one process and badly in the next.
 */
export function runFused({ numbers, objects }: Machine, code: Int32Array): void {
  for (let at = 0; at < code.length; at += length) {
    const head = code[at];
    const x = numbers[code[at + 1]];
    const y = numbers[code[at + 2]];
    const first = head & 7;
    let value: number;
    if (first === First.Multiply) {
      value = x * y;
    } else if (first === First.Add) {
      value = x + y;
    } else if (first === First.Divide) {
      value = x / y + (y - y);
    } else if (first === First.Subtract) {
      value = x - y;
    } else if (first === First.Negate) {
      value = -x;
    } else {
      value = x;
      objects[head >>> 6] = objects[code[at + 1]];
    }
    const second = (head >>> 3) & 7;
    if (second !== Second.Nothing) {
      const z = numbers[code[at + 3]];
      if (second === Second.Add) {
        value += z;
      } else if (second === Second.Multiply) {
        value *= z;
      } else if (second === Second.Subtract) {
        value -= z;
      } else if (second === Second.SubtractFrom) {
        value = z - value;
      } else if (second === Second.Divide) {
        value = value / z + (z - z);
      } else {
        value = z / value + (value - value);
      }
    }
    numbers[head >>> 6] = value;
  }
}
