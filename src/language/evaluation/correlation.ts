import { type Gradient, standardOf } from './gradient';
import { combine } from './gradient-sum';
import { type Machine, NoValue } from './machine';

/** What a reading is correlated with: slots of the other readings, and of the coefficient for each. */
export interface CorrelatedWith {
  readonly others: readonly number[];
  readonly coefficients: readonly number[];
  /** Node of the call, for messages. */
  readonly node: number;
}

/** Rounding of coefficients that just about hold together. */
const rounding = 1e-9;

/**
 * A reading's own doubt, turned so that its correlation coefficient with each other quantity is the one stated (JCGM
 * 100, 5.2 and F.1.2): part of it lies along their sources, the rest stays its own. The standard uncertainty is kept.
 */
export function correlated(machine: Machine, own: Gradient, stated: CorrelatedWith): Gradient | NoValue {
  const { uncertain, numbers } = machine;
  if (stated.others.length !== stated.coefficients.length) {
    const message = 'Each `with:` has its `correlation:`, in the same order.';
    return new NoValue('wrong-argument', message, stated.node);
  }
  const basis: Gradient[] = [];
  let along: Gradient | undefined;
  let rest = 1;
  for (const [k, slot] of stated.others.entries()) {
    const other = uncertain.gradient(slot);
    if (!other) {
      const message = 'A reading correlates only with what is uncertain itself; one that `with:` names is not.';
      return new NoValue('correlation-with-certain', message, stated.node);
    }
    const unit = combine(other, 1 / standardOf(other), undefined, 0)!;
    // What the others before this one do not span of it, and what is left for it to add to the coefficient.
    let direction: Gradient | undefined = unit;
    for (const earlier of basis) {
      direction = combine(direction, 1, earlier, -product(unit, earlier));
    }
    const left = numbers[stated.coefficients[k]] - product(unit, along);
    const length = direction ? standardOf(direction) : 0;
    if (length < rounding) {
      rest = Math.abs(left) < rounding ? rest : Number.NEGATIVE_INFINITY;
      continue;
    }
    const axis = combine(direction, 1 / length, undefined, 0)!;
    basis.push(axis);
    along = combine(along, 1, axis, left / length);
    rest -= (left / length) * (left / length);
  }
  if (!(rest >= -rounding)) {
    const message =
      'These correlation coefficients cannot all hold at once. Each lies between -1 and 1, and together they must fit how the other readings hang on one another.';
    return new NoValue('impossible-correlation', message, stated.node);
  }
  return combine(along, standardOf(own), own, Math.sqrt(Math.max(0, rest))) ?? own;
}

function product(a: Gradient, b: Gradient | undefined): number {
  const other = new Map(b);
  // Summed in an order that hangs on the terms alone, as all sums over sources are: see `sizesOf`.
  const terms = Float64Array.from([...a], ([source, component]) => component * (other.get(source) ?? 0)).sort();
  return terms.reduce((sum, term) => sum + term, 0);
}
