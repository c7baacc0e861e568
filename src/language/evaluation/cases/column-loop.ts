import type { Machine } from '../machine';
import { instructionLength, nearness, Operation } from '../operations';
import { type WasmFunction, wasm } from './wasm-module';

/** A statement's instructions, and the slot that they write for others. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly slot: number;
}

/** Locals of the loop's two integers: the place in a column in bytes, and where to stop. */
const place = 0;
const stop = 1;

/** Functions of one number that give the same bits as the instruction for them. */
const functions = new Map<(x: number) => number, readonly number[]>([
  [Math.sqrt, wasm.squareRoot],
  [Math.abs, wasm.absolute],
]);

/** True where all that a piece does can be done for two cases at once. */
export function isLoopable({ code, functionsOfOne }: Machine, { start, end }: Piece): boolean {
  for (let at = start; at < end; at += instructionLength) {
    const operation = code[at] as Operation;
    const isPlain = operation <= Operation.Not && operation !== Operation.Power && operation !== Operation.One;
    if (!isPlain && !(operation === Operation.One && functions.has(functionsOfOne[code[at + 3]]))) {
      return false;
    }
  }
  return true;
}

/**
 * A loop that does several pieces for two cases at a time. What a piece needs of another lies in a local, so that columns
 * are read and written once. The arithmetic is the machine's, step by step: IEEE 754 leaves no bit open.
 */
export class ColumnLoop implements WasmFunction {
  readonly body: number[] = [];
  locals = 0;
  /** The local that holds a slot's numbers. */
  private readonly held = new Map<number, number>();

  constructor(
    private readonly machine: Machine,
    pieces: readonly Piece[],
    /** Where a slot's column begins in memory, in bytes; a slot without one is the same in all cases. */
    private readonly offsets: ReadonlyMap<number, number>,
  ) {
    const { body } = this;
    body.push(...wasm.loop);
    for (const { start, end, slot } of pieces) {
      for (let at = start; at < end; at += instructionLength) {
        this.instruction(at);
      }
      const result = this.value(slot);
      body.push(...wasm.get(place), ...result, ...wasm.store(offsets.get(slot)!));
    }
    body.push(...wasm.get(place), ...wasm.integer(16), ...wasm.addIntegers, ...wasm.tee(place), ...wasm.get(stop));
    body.push(...wasm.isLess, ...wasm.branchIf(0), ...wasm.end);
  }

  private instruction(at: number): void {
    const { code } = this.machine;
    const [operation, target, a, b] = code.subarray(at, at + instructionLength);
    const result = this.compute(operation, this.value(a), () => this.value(b), b);
    this.body.push(...result);
    this.held.set(target, this.local());
  }

  /** What leaves a slot's numbers on the stack. */
  private value(slot: number): readonly number[] {
    const held = this.held.get(slot);
    if (held !== undefined) {
      return wasm.get(held);
    }
    const offset = this.offsets.get(slot);
    if (offset === undefined) {
      return wasm.both(this.machine.numbers[slot]);
    }
    this.body.push(...wasm.get(place), ...wasm.load(offset));
    const local = this.local();
    this.held.set(slot, local);
    return wasm.get(local);
  }

  /** Puts what is on the stack into a local of its own. */
  private local(): number {
    const local = stop + 1 + this.locals++;
    this.body.push(...wasm.set(local));
    return local;
  }

  private compute(operation: Operation, a: readonly number[], second: () => readonly number[], index: number) {
    switch (operation) {
      case Operation.Copy:
        return a;
      case Operation.Negate:
        return [...a, ...wasm.negate];
      case Operation.Not:
        return [...one, ...a, ...wasm.subtract];
      case Operation.One:
        return [...a, ...functions.get(this.machine.functionsOfOne[index])!, ...a, ...a, ...wasm.subtract, ...wasm.add];
      default:
        return ofTwo(operation, a, second());
    }
  }
}

const one = wasm.both(1);
const zero = wasm.both(0);

/** What leaves the result of an operation on two numbers on the stack; see the machine for each. */
function ofTwo(operation: Operation, a: readonly number[], b: readonly number[]): readonly number[] {
  switch (operation) {
    case Operation.Add:
      return [...a, ...b, ...wasm.add];
    case Operation.Subtract:
      return [...a, ...b, ...wasm.subtract];
    case Operation.Multiply:
      return [...a, ...b, ...wasm.multiply];
    case Operation.Divide:
      return [...a, ...b, ...wasm.divide, ...b, ...b, ...wasm.subtract, ...wasm.add];
    case Operation.Less:
      return less(a, b);
    case Operation.LessOrEqual:
      return [...one, ...less(b, a), ...wasm.subtract];
    case Operation.Greater:
      return less(b, a);
    case Operation.GreaterOrEqual:
      return [...one, ...less(a, b), ...wasm.subtract];
    case Operation.Equal:
      return [...one, ...less(a, b), ...wasm.subtract, ...less(b, a), ...wasm.subtract];
    case Operation.NotEqual:
      return [...less(a, b), ...less(b, a), ...wasm.add];
    case Operation.And:
      return [...zero, ...a, ...b, ...wasm.least, ...either(a, b, zero), ...wasm.select];
    default:
      return [...one, ...a, ...b, ...wasm.most, ...either(a, b, one), ...wasm.select];
  }
}

/** Ones where a or b has this value. */
const either = (a: readonly number[], b: readonly number[], value: readonly number[]): number[] => [
  ...[...a, ...value, ...wasm.equal],
  ...[...b, ...value, ...wasm.equal, ...wasm.or],
];

/** 1 when a is smaller than b by more than rounding, 0 when not, not a number where either is none. */
function less(a: readonly number[], b: readonly number[]): number[] {
  const difference = [...b, ...a, ...wasm.subtract];
  const margin = [
    ...wasm.both(nearness),
    ...a,
    ...wasm.absolute,
    ...b,
    ...wasm.absolute,
    ...wasm.most,
    ...wasm.multiply,
  ];
  const answer = [...difference, ...margin, ...wasm.greater, ...one, ...wasm.and];
  // Adds nothing to an answer, and takes it away where the difference is not finite.
  return [...answer, ...difference, ...difference, ...wasm.subtract, ...wasm.add];
}
