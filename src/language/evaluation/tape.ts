import type { Gradient } from './gradient';
import { GradientSum } from './gradient-sum';
import type { SourceList } from './source';

/** Stands for an operand that hangs on nothing uncertain. */
const certain = -1;

/** In place of the first operand: the gradient of the step is known. */
const isKnown = -2;

/**
 * What a statement has computed of uncertain numbers so far, step by step: for each step the slopes by its operands, or
 * a gradient that is known. A gradient is worked out only where one is asked for, in one sweep back over the steps
 * (reverse accumulation), so that the many steps in between cost nothing for the many sources.
 */
export class Tape {
  length = 0;
  private left = new Int32Array(64);
  private right = new Int32Array(64);
  private byLeft = new Float64Array(64);
  private byRight = new Float64Array(64);
  /** Zero everywhere between two sweeps. */
  private weights = new Float64Array(64);
  /** Of the steps that say so; what lies at others is left over from earlier statements. */
  private readonly known: Gradient[] = [];
  private readonly sum = new GradientSum();

  /** Forgets every step but the first `length`. */
  truncate(length: number): void {
    this.length = length;
  }

  /** A step whose gradient is known. */
  leaf(gradient: Gradient): number {
    const at = this.next();
    this.left[at] = isKnown;
    this.known[at] = gradient;
    return at;
  }

  /** A step with slopes by two earlier steps; pass -1 for one that is certain. */
  step(left: number, byLeft: number, right: number, byRight: number): number {
    const at = this.next();
    this.left[at] = left;
    this.right[at] = right;
    this.byLeft[at] = byLeft;
    this.byRight[at] = byRight;
    return at;
  }

  private next(): number {
    if (this.length === this.left.length) {
      this.grow();
    }
    return this.length++;
  }

  private grow(): void {
    const larger = <T extends Int32Array | Float64Array>(old: T, made: T): T => {
      made.set(old);
      return made;
    };
    const size = this.left.length * 2;
    this.left = larger(this.left, new Int32Array(size));
    this.right = larger(this.right, new Int32Array(size));
    this.byLeft = larger(this.byLeft, new Float64Array(size));
    this.byRight = larger(this.byRight, new Float64Array(size));
    this.weights = new Float64Array(size);
    this.known.length = size;
  }

  /**
   * The gradient of a step; undefined where everything cancels. It is kept, so that asking again costs nothing. `usual`
   * is a guess at its sources.
   */
  gradient(step: number, usual?: SourceList): Gradient | undefined {
    const { left, right, byLeft, byRight, weights, known, sum } = this;
    if (left[step] === isKnown) {
      return known[step];
    }
    weights[step] = 1;
    for (let at = step; at >= 0; at--) {
      const weight = weights[at];
      if (weight === 0) {
        continue;
      }
      weights[at] = 0;
      const l = left[at];
      if (l === isKnown) {
        sum.add(known[at], weight);
        continue;
      }
      const r = right[at];
      if (l >= 0) {
        weights[l] += weight * byLeft[at];
      }
      if (r >= 0) {
        weights[r] += weight * byRight[at];
      }
    }
    const gradient = sum.take(usual);
    right[step] = certain;
    if (gradient) {
      left[step] = isKnown;
      known[step] = gradient;
    } else {
      left[step] = certain;
    }
    return gradient;
  }
}
