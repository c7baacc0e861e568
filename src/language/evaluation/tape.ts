import { type Gradient, GradientSum } from './gradient';

/** Stands for an operand that hangs on nothing uncertain. */
const certain = -1;

/**
 * What a statement has computed of uncertain numbers so far, step by step: for each step the slopes by its operands, or
 * a gradient that is known. A gradient is worked out only where one is asked for, in one sweep back over the steps
 * (reverse accumulation), so that the many steps in between cost nothing for the many sources.
 */
export class Tape {
  length = 0;
  private left = new Int32Array(64);
  private right = new Int32Array(64);
  private bySlope = new Float64Array(128);
  private weights = new Float64Array(64);
  private readonly known: (Gradient | undefined)[] = [];
  private readonly sum = new GradientSum();

  /** Forgets every step but the first `length`. */
  truncate(length: number): void {
    this.known.fill(undefined, length, this.length);
    this.length = length;
  }

  /** A step whose gradient is known. */
  leaf(gradient: Gradient): number {
    return this.add(certain, 0, certain, 0, gradient);
  }

  /** A step with slopes by two earlier steps; pass -1 for one that is certain. */
  step(left: number, byLeft: number, right: number, byRight: number): number {
    return this.add(left, byLeft, right, byRight, undefined);
  }

  private add(left: number, byLeft: number, right: number, byRight: number, known: Gradient | undefined): number {
    const at = this.length++;
    if (at === this.left.length) {
      this.grow();
    }
    this.left[at] = left;
    this.right[at] = right;
    this.bySlope[2 * at] = byLeft;
    this.bySlope[2 * at + 1] = byRight;
    this.known[at] = known;
    return at;
  }

  private grow(): void {
    const larger = <T extends Int32Array | Float64Array>(old: T, made: T): T => {
      made.set(old);
      return made;
    };
    const size = this.left.length * 2;
    this.left = larger(this.left, new Int32Array(size));
    this.right = larger(this.right, new Int32Array(size));
    this.bySlope = larger(this.bySlope, new Float64Array(size * 2));
    this.weights = new Float64Array(size);
  }

  /** The gradient of a step; undefined where everything cancels. It is kept, so that asking again costs nothing. */
  gradient(step: number): Gradient | undefined {
    const { left, right, bySlope, weights, known, sum } = this;
    if (known[step]) {
      return known[step];
    }
    weights.fill(0, 0, step + 1);
    weights[step] = 1;
    for (let at = step; at >= 0; at--) {
      const weight = weights[at];
      if (weight === 0) {
        continue;
      }
      const leaf = known[at];
      if (leaf) {
        sum.add(leaf, weight);
        continue;
      }
      if (left[at] >= 0) {
        weights[left[at]] += weight * bySlope[2 * at];
      }
      if (right[at] >= 0) {
        weights[right[at]] += weight * bySlope[2 * at + 1];
      }
    }
    const gradient = sum.take();
    known[step] = gradient;
    return gradient;
  }
}
