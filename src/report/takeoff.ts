import { otherKeys } from '../notebook';
import type { ReportInput, ReportPrice, ReportRun } from './input';

/** Quantities to order, from the circuits and schedules of a sheet. Lengths in feet. */
export interface Takeoff {
  readonly wire: readonly LengthLine[];
  readonly raceway: readonly LengthLine[];
  readonly devices: readonly CountLine[];
  /** Of everything that has a price; absent where nothing has, or prices are in several currencies. */
  readonly cost?: { readonly amount: number; readonly currency: string };
  /** Lines that the cost leaves out, by the name that a price for each would have. */
  readonly unpriced: readonly string[];
  /** Added to every length. */
  readonly wastePercent: number;
  /** True when the sheet says how much. */
  readonly wasteGiven: boolean;
  /** The circuits that are counted. */
  readonly of: readonly string[];
  /** Circuits left out, because their length is not given. */
  readonly without: readonly string[];
  /** What the sheet names to be counted, and no circuit is called. */
  readonly unknown: readonly string[];
}

export interface LengthLine {
  readonly what: string;
  readonly feet: number;
  readonly feetToOrder: number;
  readonly cost?: number;
}

export interface CountLine {
  readonly what: string;
  readonly count: number;
  readonly cost?: number;
}

/** Cable waste of 5 to 10 % is usual: common practice, no source. */
const usualWastePercent = 5;

const grounding = ', equipment grounding';

/**
 * Totals per conductor size and metal, raceway and device. Each circuit takes its live conductors (three for three
 * phases, else two) in every set, and one equipment grounding conductor a set. `takeoff: a, b` in the front matter names
 * the circuits to count, for a sheet that also works out what is not to be ordered.
 */
export function takeoffOf({ runs: all, details, prices }: ReportInput): Takeoff | undefined {
  const named = details
    .find(([key]) => key === 'takeoff')?.[1]
    .split(',')
    .map((tag) => tag.trim());
  const runs = named ? all.filter(({ tag }) => named.includes(tag)) : all;
  const unknown = (named ?? []).filter((name) => name !== '' && !all.some(({ tag }) => tag === name));
  if (runs.length === 0 && unknown.length === 0) {
    return undefined;
  }
  const waste = details.find(([key]) => key === 'waste')?.[1].trim() ?? '';
  const stated = otherKeys.waste.written.as.test(waste) ? Number.parseFloat(waste) : Number.NaN;
  const wasteGiven = Number.isFinite(stated);
  const wastePercent = wasteGiven ? stated : usualWastePercent;
  const { wire, raceway, devices } = countedIn(runs);
  const factor = 1 + wastePercent / 100;
  const lengths = (totals: ReadonlyMap<string, number>): LengthLine[] =>
    inOrder(totals).map(([what, feet]) => {
      const feetToOrder = Math.ceil(feet * factor - 1e-9); // A length that comes out whole takes no further foot.
      const price = priceOf(prices, what)?.perFoot;
      return { what, feet, feetToOrder, ...(price !== undefined && { cost: price * feetToOrder }) };
    });
  const counts = inOrder(devices).map(([what, count]): CountLine => {
    const price = priceOf(prices, what)?.each;
    return { what, count, ...(price !== undefined && { cost: price * count }) };
  });
  const lines = [...lengths(wire), ...lengths(raceway), ...counts];
  const priced = lines.filter(({ cost }) => cost !== undefined);
  const currencies = new Set(priced.flatMap(({ what }) => priceOf(prices, what)?.currency ?? []));
  const amount = priced.reduce((all, { cost }) => all + cost!, 0);
  return {
    wire: lengths(wire),
    raceway: lengths(raceway),
    devices: counts,
    ...(currencies.size === 1 && { cost: { amount, currency: [...currencies][0] } }),
    unpriced: lines.filter(({ cost }) => cost === undefined).map(({ what }) => priceName(what)),
    wastePercent,
    wasteGiven,
    of: runs.map(({ tag }) => tag),
    without: runs.filter(({ lengthFeet }) => lengthFeet === undefined).map(({ tag }) => tag),
    unknown,
  };
}

function countedIn(runs: readonly ReportRun[]) {
  const wire = new Map<string, number>();
  const raceway = new Map<string, number>();
  const devices = new Map<string, number>();
  for (const run of runs) {
    if (run.device !== undefined) {
      add(devices, run.device, 1);
    }
    if (run.lengthFeet === undefined) {
      continue;
    }
    add(wire, run.conductorSize, run.lengthFeet * run.sets * (run.phases === 3 ? 3 : 2));
    if (run.egc !== '') {
      add(wire, run.egc + grounding, run.lengthFeet * run.sets);
    }
    if (run.raceway !== '') {
      add(raceway, run.raceway, run.lengthFeet * run.sets);
    }
  }
  return { wire, raceway, devices };
}

function add(totals: Map<string, number>, key: string, amount: number): void {
  totals.set(key, (totals.get(key) ?? 0) + amount);
}

const inOrder = (totals: ReadonlyMap<string, number>): [string, number][] =>
  [...totals].sort(([a], [b]) => a.localeCompare(b, 'en', { numeric: true }));

/** A sheet prices a line by a name: `price_10_AWG_Cu = 0.61 USD/ft`, `price_25_A_2_pole = 31 USD`. */
const priceName = (what: string): string => `price_${what.replace(grounding, '').replace(/[^\p{L}\p{N}]+/gu, '_')}`;

const priceOf = (prices: readonly ReportPrice[], what: string): ReportPrice | undefined =>
  prices.find(({ name }) => name === priceName(what));
