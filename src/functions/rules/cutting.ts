/** Which cut comes from which reel. */
export interface Cutting {
  /** For each cut, in the order given, the index of its reel; -1 where no reel is sure to be long enough. */
  readonly reelOf: readonly number[];
  /** False where the search ended before every arrangement was tried or ruled out. */
  readonly provedBest: boolean;
}

/** What is compared, in this order: cuts without a reel, their length, leftovers, their length. */
type Score = readonly [unmet: number, unmetLength: number, leftovers: number, leftoverLength: number];

/** Arrangements that are looked at before the best one found is taken. */
const mostSteps = 200_000;

/** A leftover of less than this share of the longest reel is none: two lengths of equal cuts add up with last bits. */
const lastBits = 1e-9;

const isBetter = (a: Score, b: Score, slack: number): boolean => {
  for (let i = 0; i < a.length; i++) {
    if (Math.abs(a[i] - b[i]) > (i % 2 === 0 ? 0 : slack)) {
      return a[i] < b[i];
    }
  }
  return false;
};

/**
 * Shares out cuts over reels so that the fewest and shortest leftovers remain on the reels that are cut; whole reels are
 * no leftovers. Longest cut first, each on every reel that differs, with what cannot become better left out: exact for
 * what lies on a shop's shelf, and told where it is not. Lengths are in one unit, whichever.
 */
export function shareOut(reels: readonly number[], cuts: readonly number[]): Cutting {
  const search = new Search(reels, cuts);
  search.from(0);
  return { reelOf: search.best, provedBest: search.steps < mostSteps };
}

class Search {
  /** Cuts by falling length. */
  private readonly order: readonly number[];
  private readonly left: number[];
  private readonly opened: boolean[];
  private readonly reelOf: number[];
  /** What all cuts from each place in the order on take together. */
  private readonly toCome: readonly number[];
  private readonly slack: number;
  private score: Score = [Number.POSITIVE_INFINITY, 0, 0, 0];
  best: readonly number[];
  steps = 0;

  constructor(
    private readonly reels: readonly number[],
    private readonly cuts: readonly number[],
  ) {
    this.order = cuts.map((_, i) => i).sort((a, b) => cuts[b] - cuts[a] || a - b);
    this.left = [...reels];
    this.opened = reels.map(() => false);
    this.reelOf = cuts.map(() => -1);
    this.best = [...this.reelOf];
    const toCome = cuts.map(() => 0);
    let sum = 0;
    for (let i = cuts.length - 1; i >= 0; i--) {
      sum += cuts[this.order[i]];
      toCome[i] = sum;
    }
    this.toCome = [...toCome, 0];
    this.slack = lastBits * Math.max(1, ...reels);
  }

  from(place: number, unmet = 0, unmetLength = 0): void {
    if (this.steps++ >= mostSteps || !isBetter(this.bound(place, unmet, unmetLength), this.score, this.slack)) {
      return;
    }
    if (place === this.order.length) {
      this.score = this.bound(place, unmet, unmetLength);
      this.best = [...this.reelOf];
      return;
    }
    const cut = this.order[place];
    const length = this.cuts[cut];
    const twin = place > 0 && this.cuts[this.order[place - 1]] === length ? this.reelOf[this.order[place - 1]] : 0;
    for (const reel of twin < 0 ? [] : this.candidates(length, twin)) {
      const wasOpened = this.opened[reel];
      this.left[reel] -= length;
      this.opened[reel] = true;
      this.reelOf[cut] = reel;
      this.from(place + 1, unmet, unmetLength);
      this.left[reel] += length;
      this.opened[reel] = wasOpened;
      this.reelOf[cut] = -1;
    }
    this.from(place + 1, unmet + 1, unmetLength + length);
  }

  /** Reels that hold a cut, the closest fit first; of like ones only one. Twins go by rising reel, so that no pair is tried twice. */
  private candidates(length: number, notBefore: number): number[] {
    const seen = new Set<string>();
    const found: number[] = [];
    for (let reel = notBefore; reel < this.reels.length; reel++) {
      const key = `${this.left[reel]} ${this.opened[reel]}`;
      if (this.left[reel] >= length - this.slack && !seen.has(key)) {
        seen.add(key);
        found.push(reel);
      }
    }
    return found.sort((a, b) => this.left[a] - this.left[b] || a - b);
  }

  /** No arrangement that starts like this one scores better than this. */
  private bound(place: number, unmet: number, unmetLength: number): Score {
    const shortest =
      place < this.order.length ? this.cuts[this.order[this.order.length - 1]] : Number.POSITIVE_INFINITY;
    let leftovers = 0;
    let certain = 0;
    let open = 0;
    for (let reel = 0; reel < this.reels.length; reel++) {
      const left = this.left[reel];
      if (!this.opened[reel]) {
        continue;
      }
      open += left;
      if (left > this.slack && left < shortest - this.slack) {
        leftovers += 1;
        certain += left;
      }
    }
    return [unmet, unmetLength, leftovers, Math.max(certain, open - this.toCome[place])];
  }
}
