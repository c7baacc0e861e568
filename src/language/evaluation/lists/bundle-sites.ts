import { type Machine, NoValue, type Site } from '../machine';
import { isMissing } from '../sites';

/** More than this many of one thing in a bundle is a slip of the pen. */
const largestBundle = 1000;

/** `3 * object`: a list of so many of it. */
export class BundleSite implements Site {
  constructor(
    private readonly count: number,
    private readonly object: number,
    private readonly target: number,
    /** Node of the number, for messages. */
    private readonly node: number,
  ) {}

  run(machine: Machine): void {
    const count = machine.numbers[this.count];
    const object = machine.objects[this.object];
    if (isMissing(object) || !Number.isFinite(count)) {
      machine.objects[this.target] = isMissing(object) ? object : new NoValue();
    } else if (!Number.isInteger(count) || count < 1 || count > largestBundle) {
      const message = `A bundle holds a whole number of things, from 1 to ${largestBundle}; this is ${count}.`;
      machine.objects[this.target] = new NoValue('not-a-count', message, this.node);
    } else {
      machine.objects[this.target] = Array.from({ length: count }, () => object).flat();
    }
  }
}

/** `a + b`: what is in both bundles. */
export class JoinSite implements Site {
  constructor(
    private readonly parts: readonly number[],
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const parts = this.parts.map((slot) => machine.objects[slot]);
    machine.objects[this.target] = parts.find(isMissing) ?? parts.flat();
  }
}
