import { type Machine, NoValue, type Site } from '../evaluation/machine';

/** Steps from bound to bound in which a change of sign is looked for. */
const steps = 200;
/** Halvings of one step: enough for every bit of a double. */
const halvings = 60;

/** Searches the value of an unknown between bounds at which two expressions are equal. */
export class RootSite implements Site {
  constructor(
    private readonly name: string,
    private readonly node: number,
    private readonly slots: {
      readonly unknown: number;
      readonly low: number;
      readonly high: number;
      readonly left: number;
      readonly right: number;
      readonly target: number;
    },
    /** Instructions that work out both sides. */
    private readonly start: number,
    private readonly end: number,
  ) {}

  run(machine: Machine): void {
    const { unknown, low, high, target } = this.slots;
    const from = machine.numbers[low];
    const to = machine.numbers[high];
    const roots = from < to ? this.roots(machine, from, to) : [];
    if (roots.length === 1) {
      // Once more at the value found, so that what is shown is worked out there.
      this.difference(machine, roots[0]);
      machine.numbers[unknown] = roots[0];
      machine.numbers[target] = roots[0];
      return;
    }
    machine.numbers[target] = Number.NaN;
    machine.objects[target] = new NoValue(
      roots.length === 0 ? 'no-solution' : 'several-solutions',
      roots.length === 0
        ? `No value of \`${this.name}\` between its bounds was found at which both sides are equal: they do not cross there. Check the equation, or widen the bounds.`
        : `Several values of \`${this.name}\` between its bounds make both sides equal. Narrow the bounds to the one you mean.`,
      this.node,
    );
  }

  private difference(machine: Machine, value: number): number {
    machine.numbers[this.slots.unknown] = value;
    machine.run(this.start, this.end);
    return machine.numbers[this.slots.left] - machine.numbers[this.slots.right];
  }

  private roots(machine: Machine, from: number, to: number): number[] {
    const roots: number[] = [];
    let before = from;
    let differenceBefore = this.difference(machine, from);
    if (differenceBefore === 0) {
      roots.push(from);
    }
    for (let i = 1; i <= steps; i++) {
      const at = i === steps ? to : from + ((to - from) * i) / steps;
      const difference = this.difference(machine, at);
      if (difference === 0) {
        roots.push(at);
      } else if (difference * differenceBefore < 0) {
        const root = this.halve(machine, before, at, differenceBefore);
        if (root !== undefined) {
          roots.push(root);
        }
      }
      before = at;
      differenceBefore = difference;
    }
    return roots;
  }

  /** Undefined where the sign changes at a jump and not at a value. */
  private halve(machine: Machine, from: number, to: number, differenceFrom: number): number | undefined {
    let low = from;
    let high = to;
    for (let i = 0; i < halvings; i++) {
      const middle = (low + high) / 2;
      const difference = this.difference(machine, middle);
      if (difference === 0) {
        return middle;
      }
      if (difference * differenceFrom > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    const left = Math.abs(this.difference(machine, (low + high) / 2));
    return left <= 1e-6 * Math.abs(differenceFrom) ? (low + high) / 2 : undefined;
  }
}
