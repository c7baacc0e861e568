import { showMoney } from '../display';
import type { ReportCheck, ReportInput, ReportValue } from './input';
import { takeoffOf } from './takeoff';

/** What differs between two revisions of a sheet, or between two bids. Unchanged entries are left out. */
export interface SheetComparison {
  /** Figures that the sheets state. */
  readonly inputs: readonly Change[];
  /** Figures that they work out. */
  readonly results: readonly Change[];
  /** Verdicts, and margins where the verdict stayed. */
  readonly checks: readonly Change[];
  readonly findings: {
    readonly gone: readonly FindingChange[];
    readonly added: readonly FindingChange[];
  };
  /** Quantities to order, waste included. */
  readonly takeoff: readonly Change[];
}

export interface Change {
  readonly name: string;
  /** As the first sheet shows it; absent when it has none of that name. */
  readonly before?: string;
  /** As the second sheet shows it; absent when it has none of that name. */
  readonly after?: string;
  /** The change in percent of the first, where both are numbers in one unit and the first is not 0. */
  readonly percent?: number;
}

export interface FindingChange {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
}

/** Compares two sheets entry by entry, by name; lines and order do not count. */
export function compareReports(before: ReportInput, after: ReportInput): SheetComparison {
  const inputsBefore = inputsOf(before);
  const inputsAfter = inputsOf(after);
  const isInput = (name: string) => inputsBefore.has(name) || inputsAfter.has(name);
  return {
    inputs: changesBetween(inputsBefore, inputsAfter),
    results: changesBetween(resultsOf(before, isInput), resultsOf(after, isInput)),
    checks: changesBetween(checksOf(before.checks), checksOf(after.checks)),
    findings: {
      gone: findingsOnlyIn(before, after),
      added: findingsOnlyIn(after, before),
    },
    takeoff: changesBetween(quantitiesOf(before), quantitiesOf(after)),
  };
}

/** True when nothing differs. */
export const isSame = ({ inputs, results, checks, findings, takeoff }: SheetComparison): boolean =>
  [inputs, results, checks, findings.gone, findings.added, takeoff].every((list) => list.length === 0);

interface Entry {
  readonly text: string;
  /** What is compared besides the text: figures may differ below what is shown. */
  readonly exact?: string;
  readonly value?: number;
  readonly unit?: string;
}

const valueEntry = ({ text, value, unit, low, high }: ReportValue): Entry => ({
  text,
  exact: [value, unit, low, high].join(),
  ...(value !== undefined && { value, unit }),
});

function inputsOf({ given, readings, values }: ReportInput): Map<string, Entry> {
  const stated = new Set([...given.map(({ name }) => name), ...readings.map(({ what }) => what)]);
  const entries = new Map(
    values.filter(({ name }) => stated.has(name)).map((value) => [value.name, valueEntry(value)]),
  );
  for (const { what, value, meter } of readings.filter((reading) => !entries.has(reading.what))) {
    entries.set(what, { text: meter === '' ? value : `${value} by ${meter}` });
  }
  return entries;
}

const resultsOf = ({ values }: ReportInput, isInput: (name: string) => boolean): Map<string, Entry> =>
  new Map(values.filter(({ name }) => !isInput(name)).map((value) => [value.name, valueEntry(value)]));

/** Checks of one label are told apart by their order. */
function checksOf(checks: readonly ReportCheck[]): Map<string, Entry> {
  const entries = new Map<string, Entry>();
  for (const { label, verdict, comparison, margin } of checks) {
    let name = label;
    for (let i = 2; entries.has(name); i++) {
      name = `${label} (${i})`;
    }
    const details = [comparison?.text, margin].filter((part) => part !== undefined).join(', ');
    entries.set(name, { text: details === '' ? verdict : `${verdict}: ${details}` });
  }
  return entries;
}

function quantitiesOf(input: ReportInput): Map<string, Entry> {
  const takeoff = takeoffOf(input);
  const feet = (value: number): Entry => ({ text: `${value} ft`, value, unit: 'ft' });
  return new Map([
    ...[...(takeoff?.wire ?? []), ...(takeoff?.raceway ?? [])].map(
      (line) => [line.what, feet(line.feetToOrder)] as const,
    ),
    ...(takeoff?.devices ?? []).map(({ what, count }) => [what, { text: String(count), value: count }] as const),
    ...(takeoff?.cost ? [['cost', money(takeoff.cost)] as const] : []),
  ]);
}

const money = ({ amount, currency }: { readonly amount: number; readonly currency: string }): Entry => ({
  text: showMoney(amount, currency),
  value: amount,
  unit: currency,
});

function changesBetween(before: ReadonlyMap<string, Entry>, after: ReadonlyMap<string, Entry>): Change[] {
  const names = new Set([...before.keys(), ...after.keys()]);
  return [...names].flatMap((name): Change[] => {
    const was = before.get(name);
    const is = after.get(name);
    if (was && is && was.text === is.text && was.exact === is.exact) {
      return [];
    }
    const share = was && is ? percentOf(was, is) : undefined;
    return [
      {
        name,
        ...(was && { before: was.text }),
        ...(is && { after: is.text }),
        ...(share !== undefined && { percent: share }),
      },
    ];
  });
}

const percentOf = (was: Entry, is: Entry): number | undefined =>
  was.value !== undefined && is.value !== undefined && was.unit === is.unit && was.value !== 0
    ? (100 * (is.value - was.value)) / Math.abs(was.value)
    : undefined;

/** Findings of one sheet that the other has not; the same finding twice counts twice. */
function findingsOnlyIn({ findings }: ReportInput, other: ReportInput): FindingChange[] {
  const key = ({ code, message }: FindingChange) => `${code}\n${message}`;
  const left = new Map<string, number>();
  for (const finding of other.findings) {
    left.set(key(finding), (left.get(key(finding)) ?? 0) + 1);
  }
  return findings.flatMap(({ code, severity, message }) => {
    const known = left.get(key({ code, severity, message })) ?? 0;
    left.set(key({ code, severity, message }), known - 1);
    return known > 0 ? [] : [{ code, severity, message }];
  });
}
