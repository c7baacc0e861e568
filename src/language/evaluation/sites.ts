import type { ObjectType, Type } from '../checking/type';
import { Absent } from '../library';
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
      const objects = this.items.map((slot) => machine.objects[slot]);
      machine.objects[this.target] = objects.some(isMissing) ? noValue : objects;
    }
  }
}

/** A function over any number of values. */
export class ManySite implements Site {
  constructor(
    private readonly compute: (values: ArrayLike<number>) => number,
    /** Slots of the values, or the one slot of a list. */
    private readonly slots: readonly number[],
    private readonly isList: boolean,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const list = machine.objects[this.slots[0]];
    if (this.isList) {
      machine.numbers[this.target] = isMissing(list) ? Number.NaN : this.compute(list as ArrayLike<number>);
      return;
    }
    const values = this.slots.map((slot) => machine.numbers[slot]);
    machine.numbers[this.target] = values.every(Number.isFinite) ? this.compute(values) : Number.NaN;
  }
}

/** A function of two numbers. */
export class TwoSite implements Site {
  constructor(
    private readonly compute: (x: number, y: number) => number,
    private readonly a: number,
    private readonly b: number,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const x = machine.numbers[this.a];
    const y = machine.numbers[this.b];
    machine.numbers[this.target] = this.compute(x, y) + (x - x) + (y - y);
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
