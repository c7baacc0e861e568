import { type Call, defineFunction, Failure, type Interval } from '../../language';
import { figure } from '../number-text';
import { type Cutting, shareOut } from '../rules/cutting';
import { isMetric } from '../settings';

const feetPerMetre = 1 / 0.3048;

/** The last plan made: a sheet with readings asks again and again for the one that hangs on their intervals alone. */
let last: { readonly key: string; readonly cutting: Cutting } | undefined;

function planFor(reels: readonly Interval[], cuts: readonly Interval[]): Cutting {
  const sure = reels.map(({ low }) => low);
  const needed = cuts.map(({ high }) => high);
  const key = JSON.stringify([sure, needed]);
  if (last?.key !== key) {
    last = { key, cutting: shareOut(sure, needed) };
  }
  return last.cutting;
}

const isDoubtful = ({ low, high }: Interval): boolean => high > low;

export const cut_plan = defineFunction({
  name: 'cut_plan',
  summary: 'Which cut to take from which part reel, so that the fewest and shortest leftovers remain.',
  parameters: {
    reels: { listOf: { unit: 'ft', interval: true }, meaning: 'length on each reel, measured or marked' },
    cuts: { listOf: { unit: 'ft', interval: true }, meaning: 'length of each pull, slack and make-up included' },
  },
  result: {
    record: {
      plan: { listOf: { text: true }, meaning: 'what to cut from each reel, and what no reel is sure to hold' },
      from_reel: { listOf: { unit: '' }, meaning: 'for each cut, the number of its reel; 0 where none is sure to do' },
      left: { listOf: { unit: 'ft', unitSI: 'm' }, meaning: 'what remains on each reel' },
      unmet: { listOf: { unit: 'ft', unitSI: 'm' }, meaning: 'cuts that no reel is sure to hold' },
      unmet_count: { unit: '', meaning: 'how many those are' },
      leftover_count: { unit: '', meaning: 'reels that were cut and have something left' },
      leftover: { unit: 'ft', unitSI: 'm', meaning: 'what is left on them, together' },
      all_met: { yesNo: true, meaning: 'yes when every cut has its reel' },
      proved_best: { yesNo: true, meaning: 'no when the search ended before every arrangement was ruled out' },
    },
  },
  assumptions: [
    'all reels hold the same conductor',
    'a reel counts with the lower end of its interval, a cut with the upper end: what may be long enough is not promised',
    'no cut is spliced together',
    'fewest cuts unmet, then fewest leftovers, then the shortest; whole reels are no leftovers',
  ],
  sources: ['exhaustive search with bounds; no published method'],
  examples: [
    { text: 'job = cut_plan([250 ft, 180 ft, 500 ft], [120 ft, 130 ft, 85 ft])\njob.from_reel', gives: '[1, 1, 2]' },
    {
      text: 'job = cut_plan([250 ft, 180 ft, 500 ft], [120 ft, 130 ft, 85 ft])\njob.left',
      gives: '[0 ft, 95 ft, 500 ft]',
    },
    { text: 'job = cut_plan([253.9 ft ± 7.4 ft], [250 ft])\njob.all_met', gives: 'no' },
  ],
  evaluate: ({ reels, cuts }, call) => {
    const wrong = reels.findIndex(({ low }) => !(low >= 0));
    const none = cuts.findIndex(({ value }) => !(value > 0));
    if (wrong >= 0 || none >= 0) {
      return wrong >= 0
        ? new Failure(`Reel ${wrong + 1} may hold less than nothing: check its length.`, 'reels', 'out-of-bounds')
        : new Failure(`Cut ${none + 1} is not above 0 ft: check its length.`, 'cuts', 'out-of-bounds');
    }
    const { reelOf, provedBest } = planFor(reels, cuts);
    const left = leftOn(reels, cuts, reelOf, ({ value }) => value);
    const isCut = reels.map((_, reel) => reelOf.includes(reel));
    // What two equal sums differ by in their last bits is nothing left.
    const nothing = 1e-9 * Math.max(1, ...reels.map(({ value }) => value));
    const leftovers = left.filter((rest, reel) => isCut[reel] && rest > nothing);
    const unmet = cuts.filter((_, cut) => reelOf[cut] < 0);
    tell(call, { reels, cuts, provedBest });
    return {
      plan: planLines(call, { reels, cuts, reelOf }),
      from_reel: reelOf.map((reel) => reel + 1),
      left: left.map((rest) => (Math.abs(rest) <= nothing ? 0 : rest)),
      unmet: unmet.map(({ value }) => value),
      unmet_count: unmet.length,
      leftover_count: leftovers.length,
      leftover: leftovers.reduce((sum, rest) => sum + rest, 0),
      all_met: unmet.length === 0,
      proved_best: provedBest,
    };
  },
});

const leftOn = (
  reels: readonly Interval[],
  cuts: readonly Interval[],
  reelOf: readonly number[],
  read: (length: Interval) => number,
): number[] =>
  reels.map((length, reel) =>
    reelOf.reduce((rest, from, cut) => (from === reel ? rest - read(cuts[cut]) : rest), read(length)),
  );

function tell(
  call: Call,
  { reels, cuts, provedBest }: { reels: readonly Interval[]; cuts: readonly Interval[]; provedBest: boolean },
): void {
  if (reels.some(isDoubtful)) {
    call.assume('each reel counts with the lower end of its 95 % interval');
  }
  if (cuts.some(isDoubtful)) {
    call.assume('each cut counts with the upper end of its 95 % interval');
  }
  call.choose({
    result: { kind: 'text', value: provedBest ? 'proved best' : 'not proved best' },
    because: provedBest
      ? 'every other arrangement leaves more cuts unmet, or more or longer leftovers, or just as much'
      : 'there are too many arrangements to look at all: the best one found is taken, and a better one may exist',
  });
}

function planLines(
  call: Call,
  plan: {
    readonly reels: readonly Interval[];
    readonly cuts: readonly Interval[];
    readonly reelOf: readonly number[];
  },
): string[] {
  const { reels, cuts, reelOf } = plan;
  const left = leftOn(reels, cuts, reelOf, ({ stated }) => stated);
  const metric = isMetric(call);
  const text = (feet: number) => (metric ? `${figure(feet / feetPerMetre)} m` : `${figure(feet)} ft`);
  const cutting = reels.flatMap(({ stated }, reel) => {
    const own = cuts.filter((_, cut) => reelOf[cut] === reel);
    return own.length === 0
      ? []
      : [
          `reel ${reel + 1}, ${text(stated)}: cut ${own.map((cut) => text(cut.stated)).join(' + ')}, ${text(left[reel])} left`,
        ];
  });
  const missing = cuts.flatMap((cut, i) => {
    if (reelOf[i] >= 0) {
      return [];
    }
    const may = reels.findIndex(
      ({ high, low }, reel) => high - (reels[reel].stated - left[reel]) >= cut.low && low < cut.high,
    );
    const hint =
      may < 0
        ? 'no reel is long enough'
        : `reel ${may + 1} may be long enough, but is sure to ${text(reels[may].low)} only`;
    return [`cut ${i + 1}, ${text(cut.stated)}: not promised, ${hint}`];
  });
  return [...cutting, ...missing];
}
