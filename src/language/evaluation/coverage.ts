import { type Gradient, halfWidthOfOne, rootSumOfSquares, standardOf } from './gradient';
import type { Uncertainty } from './value';

/** Up to this ratio of all other terms to the largest, the largest alone shapes the distribution (EA-4/02, S9.14). */
const dominance = 0.3;

/** The factor for about 95 % where several terms of like size make the distribution nearly normal (JCGM 100, G.6.6). */
const normalFactor = 2;

/** What is known of a quantity with this value and gradient. */
export function uncertaintyOf(base: number, gradient: Gradient): Uncertainty {
  const standard = standardOf(gradient);
  const first = indexOfLargest(gradient.components);
  const largest = Math.abs(gradient.components[first]);
  const rest = rootSumOfSquares(gradient.components, first);
  const isDominated = gradient.sources[first].stated !== 'standard' && rest <= dominance * largest;
  const coverageFactor = isDominated ? trapezoidalFactor(largest, rest) : normalFactor;
  const limits = limitsOf(gradient);
  const halfWidth = Math.min(coverageFactor * standard, limits ?? Number.POSITIVE_INFINITY);
  return {
    standard,
    low: base - halfWidth,
    high: base + halfWidth,
    coverageFactor,
    ...(limits !== undefined && { limits }),
    // Worked out when asked for: few results have their budget looked at.
    get sources() {
      return [...gradient]
        .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))
        .map(([{ name }, component]) => ({ name, share: (component / standard) ** 2 }));
    },
  };
}

function indexOfLargest(components: readonly number[]): number {
  let at = 0;
  for (let i = 1; i < components.length; i++) {
    if (Math.abs(components[i]) > Math.abs(components[at])) {
      at = i;
    }
  }
  return at;
}

/**
 * The factor for 95 % where one rectangular term dominates: the others are taken as one rectangle of the same variance,
 * and the two together make a trapezoid (EA-4/02, S10.13). With nothing beside it the term has 0.95 √3 = 1.65 (S9.14).
 */
function trapezoidalFactor(largest: number, rest: number): number {
  const a = halfWidthOfOne * largest;
  const b = halfWidthOfOne * rest;
  // Where the others are that small, the 95 % end on the flat top of the trapezoid and not on its slope.
  const halfWidth = b < 0.05 * a ? 0.95 * a : a + b - Math.sqrt(0.2 * a * b);
  return halfWidth / Math.hypot(largest, rest);
}

/** The half-width that is guaranteed, all limits against us at once; undefined where a source states no limits. */
function limitsOf(gradient: Gradient): number | undefined {
  let sum = 0;
  for (const [{ stated }, component] of gradient) {
    if (stated === 'standard') {
      return undefined;
    }
    sum += halfWidthOfOne * Math.abs(component);
  }
  return sum;
}
