import type { Machine } from '../machine';
import { instructionLength, Operation } from '../operations';
import type { StatementCode } from '../storage';
import { First, headOf, runFused, Second } from './run-fused';

interface Range {
  readonly start: number;
  readonly end: number;
}

const none = -1;

/**
 * The code of whole statements in a shorter form, for running all of them again and again: where an operation's only use
 * is as an operand of another one, both become one instruction, and nothing between them is written to a slot. Statements
 * that do more than arithmetic stay as they are.
 */
export class FusedCode {
  private readonly parts: (Int32Array | Range)[] = [];

  constructor(
    private readonly machine: Machine,
    statements: Iterable<StatementCode>,
  ) {
    let fused: number[] = [];
    const close = () => {
      if (fused.length > 0) {
        this.parts.push(Int32Array.from(fused));
        fused = [];
      }
    };
    for (const statement of statements) {
      if (isFusible(machine, statement)) {
        fuse(machine.code, statement, fused);
      } else {
        close();
        this.parts.push(statement);
      }
    }
    close();
  }

  run(): void {
    const { machine } = this;
    for (const part of this.parts) {
      if (part instanceof Int32Array) {
        runFused(machine, part);
      } else {
        machine.run(part.start, part.end);
      }
    }
  }
}

function isFusible({ code }: Machine, { start, end }: Range): boolean {
  for (let at = start; at < end; at += instructionLength) {
    const operation = code[at] as Operation;
    if (firstOf[operation] === undefined) {
      return false;
    }
  }
  return true;
}

const isOfTwo = (operation: Operation): boolean => operation >= Operation.Add && operation <= Operation.Divide;

/** Adds a statement's instructions to `fused`. */
function fuse(code: Int32Array, { start, end, slot, size }: StatementCode, fused: number[]): void {
  const instructions = Array.from({ length: (end - start) / instructionLength }, (_, i) => {
    const [operation, target, a, b] = code.subarray(start + i * instructionLength, start + (i + 1) * instructionLength);
    const isOwn = target < slot || target >= slot + size;
    return {
      operation: operation as Operation,
      target,
      a,
      b,
      isOwn,
      byA: none,
      byB: none,
      uses: 0,
      taken: none,
      isTaken: false,
    };
  });
  // Which instruction an operand comes from, if from one of this statement.
  const writers = new Map<number, number>();
  for (const [i, instruction] of instructions.entries()) {
    instruction.byA = writers.get(instruction.a) ?? none;
    instruction.byB = isOfTwo(instruction.operation) ? (writers.get(instruction.b) ?? none) : none;
    for (const by of [instruction.byA, instruction.byB]) {
      if (by !== none) {
        instructions[by].uses++;
      }
    }
    writers.set(instruction.target, i);
  }
  const canTake = (i: number, by: number): boolean => {
    if (by === none || !isOfTwo(instructions[by].operation) || !instructions[by].isOwn || instructions[by].uses > 1) {
      return false;
    }
    // Its operands are then read later than they were, so they must still be there.
    const { a, b } = instructions[by];
    return !instructions.slice(by + 1, i).some(({ target }) => target === a || target === b);
  };
  // From the outcome back. Of two that can be taken, one that takes none itself leaves more to the other.
  for (let i = instructions.length - 1; i >= 0; i--) {
    const one = instructions[i];
    if (one.isTaken || !isOfTwo(one.operation)) {
      continue;
    }
    const found = [one.byA, one.byB].filter((by) => canTake(i, by));
    const by = found.find((other) => instructions[other].byA === none && instructions[other].byB === none) ?? found[0];
    if (by !== undefined) {
      one.taken = by;
      instructions[by].isTaken = true;
    }
  }
  for (const { operation, target, a, b, byA, taken, isTaken } of instructions) {
    if (isTaken) {
      continue;
    }
    if (taken === none) {
      fused.push(headOf(firstOf[operation]!, Second.Nothing, target), a, b, 0);
    } else {
      const { operation: first, a: x, b: y } = instructions[taken];
      const isLeft = byA === taken;
      fused.push(headOf(firstOf[first]!, secondOf(operation, isLeft), target), x, y, isLeft ? b : a);
    }
  }
}

const firstOf: Partial<Record<Operation, First>> = {
  [Operation.Copy]: First.Copy,
  [Operation.Add]: First.Add,
  [Operation.Subtract]: First.Subtract,
  [Operation.Multiply]: First.Multiply,
  [Operation.Divide]: First.Divide,
  [Operation.Negate]: First.Negate,
};

/** What an operation does that takes the result of the first as its left operand, or as its right one. */
function secondOf(operation: Operation, isLeft: boolean): Second {
  switch (operation) {
    case Operation.Add:
      return Second.Add;
    case Operation.Multiply:
      return Second.Multiply;
    case Operation.Subtract:
      return isLeft ? Second.Subtract : Second.SubtractFrom;
    default:
      return isLeft ? Second.Divide : Second.DivideInto;
  }
}
