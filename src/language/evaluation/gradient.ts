let made = 0;

/** One reading or one stated limit: what does not repeat from one of them to the next. */
export class Source {
  /** Gradients hold their sources in this order, so that two of them are added in one pass. */
  readonly order = made++;

  constructor(
    /** As its author wrote it. */
    readonly name: string,
    /** Limits are rectangular: nothing is known inside them, and nothing lies outside. A standard uncertainty is normal. */
    readonly stated: 'meter' | 'limits' | 'standard',
  ) {}
}

/**
 * How a quantity hangs on each source: its slope times the source's standard uncertainty, with sign, in the coherent SI
 * unit. Sources it does not hang on are not in it, and there is none without a source.
 */
export class Gradient implements Iterable<readonly [Source, number]> {
  constructor(
    /** By their order. */
    readonly sources: readonly Source[],
    readonly components: readonly number[],
  ) {}

  static of(source: Source, component: number): Gradient | undefined {
    return component === 0 ? undefined : new Gradient([source], [component]);
  }

  get size(): number {
    return this.sources.length;
  }

  *[Symbol.iterator](): Generator<readonly [Source, number]> {
    for (const [i, source] of this.sources.entries()) {
      yield [source, this.components[i]];
    }
  }

  /** The same but for one source. */
  without(source: Source): Gradient | undefined {
    const kept = [...this].filter(([other]) => other !== source);
    return kept.length > 0
      ? new Gradient(
          kept.map(([other]) => other),
          kept.map(([, component]) => component),
        )
      : undefined;
  }
}

/** The ratio of a rectangular distribution's half-width to its standard deviation (JCGM 100, 4.3.7). */
export const halfWidthOfOne = Math.sqrt(3);

/** `p a + q b`; undefined where nothing is left, so that `x - x` is certain. */
export function combine(a: Gradient | undefined, p: number, b: Gradient | undefined, q: number): Gradient | undefined {
  if (a) {
    ofTwo.add(a, p);
  }
  if (b) {
    ofTwo.add(b, q);
  }
  return ofTwo.take();
}

/** Adds gradients up, each with a weight. One sum serves again and again. */
export class GradientSum {
  private readonly sources: Source[] = [];
  private count = 0;
  /** Component of each source, by the source's order less that of the first in reach. */
  private components = new Float64Array(64);
  private first = 0;

  add({ sources, components }: Gradient, weight: number): void {
    if (weight === 0) {
      return;
    }
    for (let i = 0; i < sources.length; i++) {
      const source = sources[i];
      let at = source.order - this.first;
      if (at < 0 || at >= this.components.length) {
        this.reach(source.order);
        at = source.order - this.first;
      }
      // A component of exactly zero is as good as none, so it tells the sources met first from those met again.
      if (this.components[at] === 0) {
        this.sources[this.count++] = source;
      }
      this.components[at] += weight * components[i];
    }
  }

  /** The sum, and a new start; undefined where nothing is left. */
  take(): Gradient | undefined {
    const { sources, components, first, count } = this;
    sortByOrder(sources, count);
    const found: Source[] = [];
    const parts: number[] = [];
    for (let i = 0; i < count; i++) {
      const source = sources[i];
      const component = components[source.order - first];
      if (component !== 0) {
        found.push(source);
        parts.push(component);
        components[source.order - first] = 0;
      }
    }
    this.count = 0;
    return found.length > 0 ? new Gradient(found, parts) : undefined;
  }

  /** Makes room for a source; the sources of one sheet lie close together. */
  private reach(order: number): void {
    const met = this.sources.slice(0, this.count);
    const orders = met.map((source) => source.order).concat(order);
    const least = orders.reduce((a, b) => Math.min(a, b));
    const span = orders.reduce((a, b) => Math.max(a, b)) - least + 1;
    const from = Math.max(0, least - span);
    const components = new Float64Array(Math.max(64, 3 * span));
    for (const source of met) {
      components[source.order - from] = this.components[source.order - this.first];
    }
    this.components = components;
    this.first = from;
  }
}

const ofTwo = new GradientSum();

/** The first `count` sources; they come nearly in order, so that going through them once mostly does it. */
function sortByOrder(sources: Source[], count: number): void {
  for (let i = 1; i < count; i++) {
    const source = sources[i];
    let at = i;
    while (at > 0 && sources[at - 1].order > source.order) {
      sources[at] = sources[at - 1];
      at--;
    }
    sources[at] = source;
  }
}

/** The combined standard uncertainty: independent sources add by squares (JCGM 100, 5.1.2). */
export const standardOf = (gradient: Gradient): number => rootSumOfSquares(gradient.components, -1);

/** The root of the sum of squares of all but one; for any number of them, and without overflow on the way. */
export function rootSumOfSquares(components: readonly number[], without: number): number {
  let largest = 0;
  for (let i = 0; i < components.length; i++) {
    largest = i === without ? largest : Math.max(largest, Math.abs(components[i]));
  }
  if (largest === 0 || !Number.isFinite(largest)) {
    return largest;
  }
  let sum = 0;
  for (let i = 0; i < components.length; i++) {
    sum += i === without ? 0 : (components[i] / largest) ** 2;
  }
  return largest * Math.sqrt(sum);
}
