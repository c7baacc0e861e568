import { drawIntervals, type IntervalPlot, type IntervalRow } from '../drawing';
import type { DoubtfulComparison, QuantityValue, Verdict } from '../language';
import { fromBase, type Unit } from '../units';
import { numberText, type RoundedNumber, roundNumber, roundToPlace, usualDigits, valueOf } from './number';
import type { Block } from './output';
import { shownUnit, uncertainPlace } from './quantity';
import { withUnit } from './value';

/** Doubt that is less than this part of the way to the limit decides nothing and would not be seen. */
const leastSeen = 0.05;

/** More places than this no double has. */
const mostExtra = 14;

/**
 * What is known of the value in a check beside its limit, as a picture and in words: the best value, where it lies with
 * 95 %, and where it is guaranteed to lie. Nothing where nobody could see the doubt beside the distance to the limit.
 */
export function intervalBlock(
  doubtful: DoubtfulComparison,
  { verdict, label }: { readonly verdict: Verdict; readonly label: string },
): Block | undefined {
  const known = knownOf(doubtful);
  const exact = known && exactOf(known);
  if (!exact || !isSeen(exact, verdict)) {
    return undefined;
  }
  const write = writer(exact);
  const rows = rowsOf(exact, write);
  const limit = write(exact.limit);
  const text = `${sentence(known, exact, write)}: ${where(known.sides, exact, verdict)} ${limit}`;
  const plot: IntervalPlot = {
    title: `${label}: ${known.isMargin ? 'the margin with its doubt' : `the value with its doubt, beside the limit of ${limit}`}`,
    description: text,
    limit: { value: exact.limit, text: known.isMargin ? 'no margin' : `limit ${limit}` },
    sides: known.sides,
    rows,
  };
  return { kind: 'drawing', drawing: drawIntervals(plot), text };
}

/** What is held against what. */
interface Known {
  readonly value: QuantityValue;
  /** In the coherent SI unit. */
  readonly limit: number;
  readonly sides: IntervalPlot['sides'];
  /** True where both sides are doubtful, so that their difference is what is looked at. */
  readonly isMargin: boolean;
}

function knownOf({ operator, left, right, difference }: DoubtfulComparison): Known | undefined {
  const sides = passes[operator];
  const turned = [sides[1], sides[0]] as const;
  if (!right.uncertainty) {
    return { value: left, limit: right.base, sides, isMargin: false };
  }
  if (!left.uncertainty) {
    return { value: right, limit: left.base, sides: turned, isMargin: false };
  }
  if (!difference?.uncertainty) {
    return undefined; // Both hang on the same reading, or one is over range and nothing is known of how far.
  }
  const { low, high } = difference.uncertainty;
  const isBelow = operator === '<' || operator === '<=';
  const margin: QuantityValue = isBelow
    ? difference
    : {
        ...difference,
        base: -difference.base,
        uncertainty: { ...difference.uncertainty, low: -high, high: -low },
      };
  return { value: margin, limit: 0, sides: isBelow ? turned : sides, isMargin: true };
}

/** What it means for the left side to lie below, and above, the right one. */
const passes: Readonly<Record<DoubtfulComparison['operator'], IntervalPlot['sides']>> = {
  '<': ['passes', 'fails'],
  '<=': ['passes', 'fails'],
  '>': ['fails', 'passes'],
  '>=': ['fails', 'passes'],
  '==': ['fails', 'fails'],
  '!=': ['passes', 'passes'],
};

/** The numbers in the unit they are shown in, not rounded. */
interface Exact {
  readonly unit: Unit;
  readonly best: number;
  readonly limit: number;
  readonly low: number;
  readonly high: number;
  /** Absent where a source states no limits. */
  readonly guaranteed?: readonly [low: number, high: number];
}

function exactOf({ value, limit }: Known): Exact | undefined {
  const { uncertainty, base } = value;
  if (!uncertainty || !Number.isFinite(base) || !Number.isFinite(limit)) {
    return undefined;
  }
  const unit = shownUnit(value);
  const number = (of: number) => fromBase(of, unit);
  const { low, high, limits } = uncertainty;
  return {
    unit,
    best: number(base),
    limit: number(limit),
    low: number(low),
    high: number(high),
    ...(limits !== undefined && { guaranteed: [number(base - limits), number(base + limits)] as const }),
  };
}

function isSeen({ best, limit, low, high, guaranteed = [low, high] }: Exact, verdict: Verdict): boolean {
  const half = (guaranteed[1] - guaranteed[0]) / 2;
  return verdict === 'cannot tell' || half >= leastSeen * Math.abs(best - limit);
}

type Write = (value: number) => string;

/**
 * Writes numbers with so many places that each stays on its side of the limit when it is read: a value of 2.996 beside a
 * limit of 3 is never written as 3.
 */
function writer(exact: Exact): Write {
  const { unit, best, limit, low, high, guaranteed = [] } = exact;
  const half = (high - low) / 2;
  const place = Number.isFinite(half) ? uncertainPlace(best, half) : undefined;
  const figures = [best, low, high, ...guaranteed].filter((value) => value !== limit && Number.isFinite(value));
  let extra = 0;
  const roundLimit = () => roundNumber(limit, usualDigits + extra);
  const round = (value: number): RoundedNumber =>
    value === limit
      ? roundLimit()
      : place
        ? roundToPlace(value, place.decimals + extra, place.exponent)
        : roundNumber(value, usualDigits + extra);
  const keepsSides = () => {
    const edge = valueOf(roundLimit());
    return figures.every((value) => Math.sign(valueOf(round(value)) - edge) === Math.sign(value - limit));
  };
  while (extra < mostExtra && !keepsSides()) {
    extra++;
  }
  return (value) => withUnit(numberText(round(value)), unit);
}

function rowsOf({ best, low, high, guaranteed }: Exact, write: Write): IntervalRow[] {
  if (!Number.isFinite(high) || !Number.isFinite(low)) {
    const bound = Number.isFinite(low) ? `at least ${write(low)}` : `at most ${write(high)}`;
    return [{ name: 'over range', figures: bound, form: 'span', low, high }];
  }
  const between = (from: number, to: number) => `${write(from)} to ${write(to)}`;
  const rows: IntervalRow[] = [
    { name: 'best value', figures: write(best), form: 'best', low: best, high: best },
    { name: '95 %', figures: between(low, high), form: 'band', low, high },
  ];
  return guaranteed
    ? [
        ...rows,
        { name: 'guaranteed', figures: between(...guaranteed), form: 'span', low: guaranteed[0], high: guaranteed[1] },
      ]
    : rows;
}

function sentence({ isMargin }: Known, { low, high, guaranteed }: Exact, write: Write): string {
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    return Number.isFinite(low) ? `at least ${write(low)}` : `at most ${write(high)}`;
  }
  const within = ([from, to]: readonly [number, number]) => `within ${write(from)} to ${write(to)}`;
  const most = guaranteed ? `, guaranteed ${within(guaranteed)}` : '';
  return `${isMargin ? 'margin: ' : ''}95 % ${within([low, high])}${most}`;
}

/** Where all of that lies, in words that go before the limit. */
function where([below, above]: Known['sides'], exact: Exact, verdict: Verdict): string {
  if (verdict === 'cannot tell') {
    return below === above ? 'cannot tell it from' : 'on both sides of';
  }
  if (below === above) {
    return 'all of the 95 % apart from';
  }
  const side = verdict === 'yes' ? 'passing' : 'failing';
  const { limit, low, high, guaranteed = [low, high] } = exact;
  return guaranteed[0] < limit && guaranteed[1] > limit
    ? `the 95 % on the ${side} side, the guaranteed limits on both sides of`
    : `all on the ${side} side of`;
}
