import { type Gradient, halfWidthOfOne, standardOf } from './gradient';
import type { Uncertainty } from './value';

/** Below this ratio of all other terms to the largest, the largest alone shapes the distribution (EA-4/02, S9.14). */
const dominance = 0.3;

/** The factor for 95 % where one rectangular term dominates: 0.95 √3 (EA-4/02, S9.14). */
const rectangularFactor = 1.65;

/** The factor for about 95 % where several terms of like size make the distribution nearly normal (JCGM 100, G.6.6). */
const normalFactor = 2;

/** What is known of a quantity with this value and gradient. */
export function uncertaintyOf(base: number, gradient: Gradient): Uncertainty {
  const standard = standardOf(gradient);
  const largestFirst = [...gradient].sort(([, a], [, b]) => Math.abs(b) - Math.abs(a));
  const [[first, largest]] = largestFirst;
  const rest = Math.hypot(...largestFirst.slice(1).map(([, component]) => component));
  const isDominated = first.stated !== 'standard' && rest <= dominance * Math.abs(largest);
  const coverageFactor = isDominated ? rectangularFactor : normalFactor;
  const limits = limitsOf(gradient);
  const halfWidth = Math.min(coverageFactor * standard, limits ?? Number.POSITIVE_INFINITY);
  return {
    standard,
    low: base - halfWidth,
    high: base + halfWidth,
    coverageFactor,
    ...(limits !== undefined && { limits }),
    sources: largestFirst.map(([{ name }, component]) => ({ name, share: (component / standard) ** 2 })),
  };
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
