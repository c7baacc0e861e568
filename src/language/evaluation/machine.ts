import type { ProblemCode } from '../../text';
import type { Holes } from './lists/holes';
import { instructionLength, nearness, Operation } from './operations';
import { UncertainSlots } from './uncertain-slots';

/** Work that is more than arithmetic: a call of a library function, a list, a comparison of objects. */
export interface Site {
  run(machine: Machine): void;
  /** Runs and carries the doubt of what goes in along; absent where what comes out has none. */
  runWithDoubt?(machine: Machine): void;
}

/** Stands in an object slot that has no value because something went wrong on the way. */
export class NoValue {
  constructor(
    /** Set where it arose; dependants only pass it on. */
    readonly code?: ProblemCode,
    readonly message?: string,
    /** Node at fault, in the tree of the call. */
    readonly node?: number,
  ) {}
}

export const noValue = new NoValue();

/**
 * Slots and instructions. Each slot has a number (quantities in the coherent SI unit, answers of yes or no) and an
 * object (everything else); what a slot holds is known from its type, never asked at run time.
 */
export class Machine {
  numbers = new Float64Array(256);
  objects: unknown[] = [];
  private isConstant = new Uint8Array(256);
  private used = 0;
  private readonly constants = new Map<number, number>();
  private readonly free = new Map<number, number[]>();
  code = new Int32Array(1024);
  codeLength = 0;
  readonly sites: Site[] = [];
  readonly functionsOfOne: ((x: number) => number)[] = [];
  /** The derivative of each. */
  readonly slopesOfOne: ((x: number) => number)[] = [];
  readonly uncertain = new UncertainSlots();
  /** Why lists lack values at some of their places. */
  readonly holes: WeakMap<object, Holes> = new WeakMap();
  /** Index of the row for which the code of a schedule's column runs; -1 outside. */
  row = -1;

  /** `size` slots in a row that nothing else uses. */
  allocate(size: number): number {
    return this.free.get(size)?.pop() ?? this.extend(size);
  }

  release(slot: number, size: number): void {
    const list = this.free.get(size);
    if (list) {
      list.push(slot);
    } else {
      this.free.set(size, [slot]);
    }
  }

  /** `size` slots at the end. */
  extend(size: number): number {
    const slot = this.used;
    this.used += size;
    if (this.used > this.numbers.length) {
      const numbers = new Float64Array(this.used * 2);
      numbers.set(this.numbers);
      this.numbers = numbers;
      const isConstant = new Uint8Array(this.used * 2);
      isConstant.set(this.isConstant);
      this.isConstant = isConstant;
      this.uncertain.reserve(this.used * 2);
    }
    while (this.objects.length < this.used) {
      this.objects.push(undefined);
    }
    return slot;
  }

  /** The slot that holds this number; every number has one. */
  constant(value: number): number {
    let slot = this.constants.get(value);
    if (slot === undefined) {
      slot = this.extend(1);
      this.numbers[slot] = value;
      this.isConstant[slot] = 1;
      this.constants.set(value, slot);
    }
    return slot;
  }

  holdsConstant(slot: number): boolean {
    return this.isConstant[slot] === 1;
  }

  /** Adds an instruction and returns where it stands. */
  emit(operation: Operation, target: number, a = 0, b = 0): number {
    const at = this.codeLength;
    if (at + instructionLength > this.code.length) {
      const code = new Int32Array(this.code.length * 2);
      code.set(this.code);
      this.code = code;
    }
    const { code } = this;
    code[at] = operation;
    code[at + 1] = target;
    code[at + 2] = a;
    code[at + 3] = b;
    this.codeLength = at + instructionLength;
    return at;
  }

  /** Drops all instructions; slots stay. */
  clearCode(): void {
    this.codeLength = 0;
    this.sites.length = 0;
  }

  addSite(site: Site): number {
    return this.sites.push(site) - 1;
  }

  addFunction(compute: (x: number) => number, slope: (x: number) => number): number {
    const index = this.functionsOfOne.indexOf(compute);
    if (index >= 0) {
      return index;
    }
    this.slopesOfOne.push(slope);
    return this.functionsOfOne.push(compute) - 1;
  }

  /** What a later `forget` returns to: code, sites and slots made since then are dropped. */
  mark() {
    return { used: this.used, codeLength: this.codeLength, sites: this.sites.length };
  }

  forget(mark: ReturnType<Machine['mark']>): void {
    if (!this.uncertain.isEmpty) {
      this.uncertain.clearFrom(mark.used);
    }
    this.objects.fill(undefined, mark.used, this.used);
    this.used = mark.used;
    this.codeLength = mark.codeLength;
    this.sites.length = mark.sites;
  }

  run(start: number, end: number): void {
    const { code } = this;
    // Sites may call functions, but those never add slots to this machine, so the array stays the same.
    const r = this.numbers;
    for (let at = start; at < end; at += 4) {
      const target = code[at + 1];
      const a = code[at + 2];
      const b = code[at + 3];
      switch (code[at]) {
        case Operation.Add:
          r[target] = r[a] + r[b];
          break;
        case Operation.Subtract:
          r[target] = r[a] - r[b];
          break;
        case Operation.Multiply:
          r[target] = r[a] * r[b];
          break;
        case Operation.Divide:
          // Not finite for a divisor of zero; the second term keeps one that is not finite from giving a clean zero.
          r[target] = r[a] / r[b] + (r[b] - r[b]);
          break;
        case Operation.Power:
          r[target] = r[a] ** r[b] + (r[a] - r[a]);
          break;
        case Operation.Negate:
          r[target] = -r[a];
          break;
        case Operation.One: {
          const x = r[a];
          r[target] = this.functionsOfOne[b](x) + (x - x);
          break;
        }
        case Operation.Copy:
          r[target] = r[a];
          this.objects[target] = this.objects[a];
          break;
        case Operation.Less:
          r[target] = less(r[a], r[b]);
          break;
        case Operation.LessOrEqual:
          r[target] = 1 - less(r[b], r[a]);
          break;
        case Operation.Greater:
          r[target] = less(r[b], r[a]);
          break;
        case Operation.GreaterOrEqual:
          r[target] = 1 - less(r[a], r[b]);
          break;
        case Operation.Equal:
          r[target] = 1 - less(r[a], r[b]) - less(r[b], r[a]);
          break;
        case Operation.NotEqual:
          r[target] = less(r[a], r[b]) + less(r[b], r[a]);
          break;
        case Operation.And:
          // A no settles it, even where the other side has no value.
          r[target] = r[a] === 0 || r[b] === 0 ? 0 : Math.min(r[a], r[b]);
          break;
        case Operation.Or:
          r[target] = r[a] === 1 || r[b] === 1 ? 1 : Math.max(r[a], r[b]);
          break;
        case Operation.Not:
          r[target] = 1 - r[a];
          break;
        case Operation.Site:
          this.sites[a].run(this);
          break;
        case Operation.Jump:
          at += a * 4;
          break;
        case Operation.Branch:
          if (r[target] !== 1) {
            at += (r[target] === 0 ? a : b) * 4;
          }
          break;
        case Operation.NoValue:
          for (let slot = target; slot < target + a; slot++) {
            r[slot] = Number.NaN;
            this.objects[slot] = noValue;
          }
          break;
      }
    }
  }
}

/** 1 when a is smaller than b by more than rounding, 0 when not, NaN where either is no number. */
export function less(a: number, b: number): number {
  const difference = b - a;
  if (difference - difference !== 0) {
    return Number.NaN;
  }
  const largest = Math.max(Math.abs(a), Math.abs(b));
  return difference > nearness * largest ? 1 : 0;
}
