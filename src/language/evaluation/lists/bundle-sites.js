import { NoValue } from '../machine';
import { isMissing } from '../sites';

/** More than this many of one thing in a bundle is a slip of the pen. */
const largestBundle = 1000;
/** `3 * object`: a list of so many of it. */
export class BundleSite {
  count;
  object;
  target;
  node;
  constructor(
    count,
    object,
    target,
    /** Node of the number, for messages. */
    node,
  ) {
    this.count = count;
    this.object = object;
    this.target = target;
    this.node = node;
  }
  run(machine) {
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
export class JoinSite {
  parts;
  target;
  constructor(parts, target) {
    this.parts = parts;
    this.target = target;
  }
  run(machine) {
    const parts = this.parts.map((slot) => machine.objects[slot]);
    machine.objects[this.target] = parts.find(isMissing) ?? parts.flat();
  }
}
