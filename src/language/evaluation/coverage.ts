import { type Gradient, halfWidthOfOne, rootSumOfSquares, sizesOf } from './gradient';
import type { Uncertainty } from './value';

/** Up to this ratio of all other terms to the largest, the largest alone shapes the distribution (EA-4/02, S9.14). */
const dominance = 0.3;

/** The factor for about 95 % where several terms of like size make the distribution nearly normal (JCGM 100, G.6.6). */
const normalFactor = 2;

/** What is known of a quantity with this value and gradient. */
export function uncertaintyOf(base: number, gradient: Gradient): Uncertainty {
  const sizes = sizesOf(gradient);
  const standard = rootSumOfSquares(sizes, sizes.length);
  const largest = sizes[sizes.length - 1];
  const rest = rootSumOfSquares(sizes, sizes.length - 1);
  // One that dominates has no equal, so its size tells which it is.
  const isDominated = rest <= dominance * largest && isRectangular(gradient, largest);
  const coverageFactor = isDominated ? trapezoidalFactor(largest, rest) : normalFactor;
  const limits = limitsOf(gradient, sizes);
  const halfWidth = Math.min(coverageFactor * standard, limits ?? Number.POSITIVE_INFINITY);
  return {
    standard,
    low: base - halfWidth,
    high: base + halfWidth,
    coverageFactor,
    ...(limits !== undefined && { limits }),
    // Worked out when asked for: few results have their budget looked at.
    get sources() {
      return gradient.bySize().map(([{ name }, component]) => ({ name, share: (component / standard) ** 2 }));
    },
  };
}

/** True where the source with the component of this size is known by limits. */
const isRectangular = ({ list, components }: Gradient, size: number): boolean =>
  list.sources.some(({ stated }, i) => stated !== 'standard' && Math.abs(components[i]) === size);

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
const limitsOf = ({ list }: Gradient, sizes: Float64Array): number | undefined =>
  list.sources.some(({ stated }) => stated === 'standard')
    ? undefined
    : sizes.reduce((sum, size) => sum + halfWidthOfOne * size, 0);
