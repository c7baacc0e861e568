/** One reading or one stated limit: what does not repeat from one of them to the next. */
export interface Source {
  /** As its author wrote it. */
  readonly name: string;
  /** Limits are rectangular: nothing is known inside them, and nothing lies outside. A standard uncertainty is normal. */
  readonly stated: 'meter' | 'limits' | 'standard';
}

/**
 * How a quantity hangs on each source: its slope times the source's standard uncertainty, with sign, in the coherent SI
 * unit. Sources it does not hang on are not in it.
 */
export type Gradient = ReadonlyMap<Source, number>;

/** The ratio of a rectangular distribution's half-width to its standard deviation (JCGM 100, 4.3.7). */
export const halfWidthOfOne = Math.sqrt(3);

/** `p a + q b`; undefined where nothing is left, so that `x - x` is certain. */
export function combine(a: Gradient | undefined, p: number, b: Gradient | undefined, q: number): Gradient | undefined {
  const sum = new Map<Source, number>();
  for (const [source, component] of a ?? []) {
    sum.set(source, p * component);
  }
  for (const [source, component] of b ?? []) {
    sum.set(source, (sum.get(source) ?? 0) + q * component);
  }
  for (const [source, component] of sum) {
    if (component === 0) {
      sum.delete(source);
    }
  }
  return sum.size > 0 ? sum : undefined;
}

/** The combined standard uncertainty: independent sources add by squares (JCGM 100, 5.1.2). */
export const standardOf = (gradient: Gradient): number => Math.hypot(...gradient.values());
