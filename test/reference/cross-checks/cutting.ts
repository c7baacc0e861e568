import { inUnit } from '../../functions/sheet';
import { type CrossCheck, within } from './cross-check';

interface Outcome {
  readonly unmet: number;
  readonly unmetFt: number;
  readonly leftovers: number;
  readonly leftFt: number;
}

/** Every way to take each cut from some reel or from none. */
function* arrangements(cuts: number, reels: number): Generator<readonly number[]> {
  for (let code = 0; code < (reels + 1) ** cuts; code++) {
    yield Array.from({ length: cuts }, (_, cut) => (Math.floor(code / (reels + 1) ** cut) % (reels + 1)) - 1);
  }
}

function outcomeOf(reels: readonly number[], cuts: readonly number[], from: readonly number[]): Outcome | undefined {
  const left = reels.map((length, reel) =>
    cuts.reduce((rest, cut, i) => (from[i] === reel ? rest - cut : rest), length),
  );
  const begun = left.filter((rest, reel) => from.includes(reel) && rest > 0);
  const without = cuts.filter((_, i) => from[i] < 0);
  return left.some((rest) => rest < 0)
    ? undefined
    : {
        unmet: without.length,
        unmetFt: without.reduce((sum, cut) => sum + cut, 0),
        leftovers: begun.length,
        leftFt: begun.reduce((sum, rest) => sum + rest, 0),
      };
}

/** The best of all arrangements: fewest and shortest cuts unmet, then fewest and shortest leftovers. */
function bestOf(reels: readonly number[], cuts: readonly number[]): Outcome {
  let best: Outcome | undefined;
  for (const from of arrangements(cuts.length, reels.length)) {
    const outcome = outcomeOf(reels, cuts, from);
    if (outcome && (best === undefined || isBetter(outcome, best))) {
      best = outcome;
    }
  }
  return best!;
}

function isBetter(a: Outcome, b: Outcome): boolean {
  const differing = (['unmet', 'unmetFt', 'leftovers', 'leftFt'] as const).find((key) => a[key] !== b[key]);
  return differing !== undefined && a[differing] < b[differing];
}

/** The same lengths each time: a linear congruential generator, whole feet. */
function* lengths(): Generator<number> {
  for (let state = 12345; ; ) {
    state = (1103515245 * state + 12345) % 2 ** 31;
    yield state / 2 ** 31;
  }
}

const draw = lengths();
const feet = (from: number, to: number): number => Math.round(from + (to - from) * draw.next().value);

/** Shelves with cuts that fill a reel by chance, and one that fills two of them to the last foot. */
const shelves: readonly { readonly reels: readonly number[]; readonly cuts: readonly number[] }[] = [
  { reels: [250, 180, 500], cuts: [120, 130, 85] },
  { reels: [100, 90, 80], cuts: [60, 50, 40, 30, 20] },
  { reels: [40, 30], cuts: [50, 35, 25] },
  ...Array.from({ length: 12 }, () => ({
    reels: Array.from({ length: 3 }, () => feet(40, 300)),
    cuts: Array.from({ length: 5 }, () => feet(20, 140)),
  })),
];

export const cuttingChecks: readonly CrossCheck[] = [
  {
    title: 'cuts from part reels',
    formula: 'best of every arrangement there is: fewest cuts unmet, then fewest leftovers, then the shortest',
    source: 'exhaustive enumeration, without the bounds that the function searches by',
    leeway: 'last bits of a float',
    functions: ['cut_plan'],
    compare: () =>
      shelves.flatMap(({ reels, cuts }) => {
        const best = bestOf(reels, cuts);
        const written = (values: readonly number[]) => `[${values.map((value) => `${value} ft`).join(', ')}]`;
        const job = `job = cut_plan(${written(reels)}, ${written(cuts)})`;
        const what = `${cuts.join(' + ')} ft from ${reels.join(', ')} ft`;
        return [
          within(`${what}: unmet`, inUnit(`${job}\njob.unmet_count`, ''), best.unmet, 0),
          within(`${what}: leftovers`, inUnit(`${job}\njob.leftover_count`, ''), best.leftovers, 0),
          within(`${what}: left`, inUnit(`${job}\njob.leftover`, 'ft'), best.leftFt, 1e-6),
        ];
      }),
  },
];
