import { Gradient } from './gradient';
import { SourceList } from './source';

/** Adds gradients up, each with a weight. One sum serves again and again. */
export class GradientSum {
  /** What is to be added; behind `count`, what was left over by earlier sums. */
  private readonly terms: Gradient[] = [];
  private readonly weights: number[] = [];
  private count = 0;
  /** The term with the most sources. */
  private widest = 0;

  add(gradient: Gradient, weight: number): void {
    if (weight !== 0) {
      const at = this.count++;
      this.terms[at] = gradient;
      this.weights[at] = weight;
      if (at === 0 || gradient.components.length > this.terms[this.widest].components.length) {
        this.widest = at;
      }
    }
  }

  /**
   * The sum, and a new start; undefined where nothing is left. `usual` is a guess at its sources: where it is right, or
   * where one term has all of them, its list is shared and none is made.
   */
  take(usual?: SourceList): Gradient | undefined {
    if (this.count === 0) {
      return undefined;
    }
    const { list } = this.terms[this.widest];
    const sum = (usual && this.over(usual)) ?? (usual === list ? undefined : this.over(list)) ?? this.overAll();
    this.count = 0;
    return sum;
  }

  /**
   * The sum, where these are just its sources: none is missing, and none of them comes to nothing. The widest term comes
   * first and the others as they were added, whichever the list, so that the sum is the same to the last bit.
   */
  private over(list: SourceList): Gradient | undefined {
    const { terms, weights, count, widest } = this;
    const isWidest = terms[widest].list === list;
    const sums = isWidest ? scaled(terms[widest], weights[widest]) : zeros(list.orders.length);
    if (!sums || (!isWidest && !addTo(sums, list, terms[widest], weights[widest]))) {
      return undefined;
    }
    for (let k = 0; k < count; k++) {
      if (k !== widest && !addTo(sums, list, terms[k], weights[k])) {
        return undefined;
      }
    }
    return isWidest || !hasZero(sums) ? new Gradient(list, sums) : undefined;
  }

  private overAll(): Gradient | undefined {
    const { terms, weights, count, widest } = this;
    const all = SourceList.union(terms.slice(0, count).map(({ list }) => list));
    const sums = zeros(all.orders.length);
    addTo(sums, all, terms[widest], weights[widest]);
    for (let k = 0; k < count; k++) {
      if (k !== widest) {
        addTo(sums, all, terms[k], weights[k]);
      }
    }
    const isLeft = (_: unknown, i: number) => sums[i] !== 0;
    const sources = all.sources.filter(isLeft);
    return sources.length > 0 ? new Gradient(new SourceList(sources), sums.filter(isLeft)) : undefined;
  }
}

/** The components times a weight; undefined where one of them comes to nothing. */
function scaled({ components }: Gradient, weight: number): number[] | undefined {
  const sums = components.slice(); // Copying them first is faster than filling a new array.
  let isWhole = true;
  for (let i = 0; i < sums.length; i++) {
    sums[i] *= weight;
    isWhole &&= sums[i] !== 0;
  }
  return isWhole ? sums : undefined;
}

function zeros(size: number): number[] {
  const sums = new Array<number>(size);
  for (let i = 0; i < size; i++) {
    sums[i] = 0;
  }
  return sums;
}

function hasZero(sums: readonly number[]): boolean {
  for (let i = 0; i < sums.length; i++) {
    if (sums[i] === 0) {
      return true;
    }
  }
  return false;
}

/** Adds a term to sums over the sources of a list; false where one of its own is not there, or comes to nothing. */
function addTo(sums: number[], all: SourceList, { list, components }: Gradient, weight: number): boolean {
  const { orders } = list;
  let isWhole = true;
  for (let i = 0; i < orders.length; i++) {
    const at = all.indexOf(orders[i]);
    if (at < 0) {
      return false;
    }
    sums[at] += weight * components[i];
    isWhole &&= sums[at] !== 0;
  }
  return isWhole;
}

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

const ofTwo = new GradientSum();
