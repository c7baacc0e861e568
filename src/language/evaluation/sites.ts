import type { ObjectType, Type } from '../checking/type';
import { Absent } from '../library';
import type { Operation as MathematicsOperation } from '../mathematics/operation';
import { combine } from './gradient-sum';
import { type Machine, NoValue, noValue, type Site } from './machine';

/** True for the mark of something that went wrong and for a field that has no value. */
export const isMissing = (object: unknown): boolean => object instanceof NoValue || object instanceof Absent;

/** `[a, b, c]`: numbers where the items are quantities, else objects. */
export class ListSite implements Site {
  constructor(
    private readonly element: Type,
    private readonly items: readonly number[],
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    if (this.element.kind === 'quantity' || this.element.kind === 'boolean') {
      const values = Float64Array.from(this.items, (slot) => machine.numbers[slot]);
      machine.objects[this.target] = values.every(Number.isFinite) ? values : noValue;
    } else {
      // A bundle in a list stands for what is in it.
      const objects = this.items.flatMap((slot) => machine.objects[slot]);
      machine.objects[this.target] = objects.some(isMissing) ? noValue : objects;
    }
  }

  runWithDoubt(machine: Machine): void {
    const gradients = this.items.map((slot) => machine.uncertain.gradient(slot));
    this.run(machine);
    machine.uncertain.clear(this.target, 1);
    machine.uncertain.setItems(this.target, gradients);
  }
}

/** A function of two numbers. */
export class TwoSite implements Site {
  constructor(
    private readonly operation: Extract<MathematicsOperation, { kind: 'two' }>,
    private readonly a: number,
    private readonly b: number,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const x = machine.numbers[this.a];
    const y = machine.numbers[this.b];
    machine.numbers[this.target] = this.operation.compute(x, y) + (x - x) + (y - y);
  }

  runWithDoubt(machine: Machine): void {
    const { numbers, uncertain } = machine;
    const a = uncertain.gradient(this.a);
    const b = uncertain.gradient(this.b);
    const [byX, byY] = a || b ? this.operation.slopes(numbers[this.a], numbers[this.b]) : [0, 0];
    this.run(machine);
    uncertain.clear(this.target, 1);
    uncertain.setGradient(this.target, combine(a, byX, b, byY));
  }
}

/** `==` and `!=` between texts, words or objects of one type. */
export class SameSite implements Site {
  constructor(
    private readonly object: ObjectType | undefined,
    private readonly a: number,
    private readonly b: number,
    private readonly wanted: boolean,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const a = machine.objects[this.a];
    const b = machine.objects[this.b];
    const same = this.object ? () => this.object!.text(a) === this.object!.text(b) : () => a === b;
    machine.numbers[this.target] = isMissing(a) || isMissing(b) ? Number.NaN : same() === this.wanted ? 1 : 0;
  }
}
