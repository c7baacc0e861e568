import { type Source, SourceList } from './source';

/**
 * How a quantity hangs on each source: its slope times the source's standard uncertainty, with sign, in the coherent SI
 * unit. Sources it does not hang on are not in it, and there is none without a source.
 */
export class Gradient implements Iterable<readonly [Source, number]> {
  constructor(
    readonly list: SourceList,
    /** One for each source of the list. */
    readonly components: readonly number[],
  ) {}

  static of(source: Source, component: number): Gradient | undefined {
    return component === 0 ? undefined : new Gradient(source.alone, [component]);
  }

  *[Symbol.iterator](): Generator<readonly [Source, number]> {
    for (const [i, source] of this.list.sources.entries()) {
      yield [source, this.components[i]];
    }
  }

  /** The largest first, and of equals by name: an order that does not hang on which source was made first. */
  bySize(): (readonly [Source, number])[] {
    return [...this].sort(
      ([{ name: a }, x], [{ name: b }, y]) => Math.abs(y) - Math.abs(x) || (a < b ? -1 : a > b ? 1 : 0),
    );
  }

  /** The same but for one source. */
  without(source: Source): Gradient | undefined {
    const kept = [...this].filter(([other]) => other !== source);
    return kept.length > 0
      ? new Gradient(
          new SourceList(kept.map(([other]) => other)),
          kept.map(([, component]) => component),
        )
      : undefined;
  }
}

/** The ratio of a rectangular distribution's half-width to its standard deviation (JCGM 100, 4.3.7). */
export const halfWidthOfOne = Math.sqrt(3);

/**
 * The components without their signs, the smallest first. Sums over sources are taken in this order, so that every bit
 * of them is the same in whichever order the sources were made: a sheet shows the same after any history of edits.
 */
export const sizesOf = ({ components }: Gradient): Float64Array => Float64Array.from(components, Math.abs).sort();

/** The combined standard uncertainty: independent sources add by squares (JCGM 100, 5.1.2). */
export function standardOf(gradient: Gradient): number {
  const sizes = sizesOf(gradient);
  return rootSumOfSquares(sizes, sizes.length);
}

/** The root of the sum of squares of the first `count`, of which the last is the largest; without overflow on the way. */
export function rootSumOfSquares(sizes: Float64Array, count: number): number {
  const largest = count > 0 ? sizes[count - 1] : 0;
  if (largest === 0 || !Number.isFinite(largest)) {
    return largest;
  }
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const share = sizes[i] / largest;
    sum += share * share;
  }
  return largest * Math.sqrt(sum);
}
