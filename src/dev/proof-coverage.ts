import { type CrossCheck, crossChecks } from '../../test/reference/cross-checks';
import { collections, type Example, examples, notYet } from '../../test/reference/example';
import { runExample } from '../../test/reference/run-example';
import { circuitKinds, tradeFunctions } from '../functions';
import type { CallRecord, Step } from '../language';
import { loadRows } from '../tables/rows';
import { subjects } from '../tables/subjects';
import type { TableReference } from '../text';

/** The outside checks of one function or table. */
export interface Coverage {
  readonly name: string;
  /** Ids of examples whose answer was read in the source, whole or in part; and of the others. */
  readonly read: readonly string[];
  readonly recomputed: readonly string[];
  /** Titles of the cross-checks, and how many values they compare. */
  readonly crossChecks: readonly string[];
  readonly compared: number;
}

export interface TableCoverage extends Coverage {
  readonly title: string;
  readonly rows: number;
  /** How many of the rows were seen in no public reproduction. */
  readonly fromMemory: number;
}

interface Uses {
  readonly example: Example;
  readonly functions: ReadonlySet<string>;
  readonly tables: ReadonlySet<string>;
}

/** A circuit proves something about its kind alone, since the kind decides which rules hold. */
const circuitName = (kind: string | undefined): string => (kind ? `circuit, kind: ${kind}` : 'circuit');

function calledName(call: CallRecord): string {
  const kind = call.arguments.get('kind');
  return call.function === 'circuit'
    ? circuitName(kind?.given && kind.value.kind === 'choice' ? kind.value.value : undefined)
    : call.function;
}

const placeOf = ({ standard, edition, table }: TableReference): string => `${standard} | ${edition} | ${table}`;

/** Ids of the tables by where their rows say that they stand. */
const subjectAt = new Map(
  subjects.flatMap((subject) =>
    subject.files.flatMap((file) =>
      file.editions.flatMap((edition) =>
        loadRows(subject, [file], edition).map(({ found }) => [placeOf(found.source), subject.id] as const),
      ),
    ),
  ),
);

const tableSteps = (steps: readonly Step[]): TableReference[] =>
  steps.flatMap((step) => (step.kind === 'table' ? [step.source] : step.kind === 'call' ? tableSteps(step.steps) : []));

/** Fields of a circuit that hang on a table. A circuit reads it on its way even where nobody asks for the field. */
const circuitFields: Readonly<Record<string, RegExp>> = {
  'raceway-fill': /\.raceway\b/,
  'raceway-areas': /\.raceway\b/,
  'insulated-areas': /\.raceway\b/,
  'equipment-grounding': /\.egc\b/,
  'conductor-properties': /\.(drop|drop_percent|egc)\b/,
  'ac-impedance': /\.(drop|drop_percent)\b/,
};

function usesOf(example: Example): Uses {
  const results = runExample(example).cells.flatMap((cell) => cell.results);
  const asked = example.expect.flatMap((each) => ('name' in each ? [each.name] : [])).join(' ');
  const tablesIn = (steps: readonly Step[], wanted: (table: string) => boolean): string[] =>
    tableSteps(steps)
      .flatMap((source) => subjectAt.get(placeOf(source)) ?? [])
      .filter(wanted);
  return {
    example,
    functions: new Set(results.flatMap((result) => result.calls().map(calledName))),
    tables: new Set(
      results.flatMap((result) => {
        const inCircuit = result.calls().some((call) => call.function === 'circuit');
        return tablesIn(result.trace().steps, (table) => !inCircuit || (circuitFields[table]?.test(asked) ?? true));
      }),
    ),
  };
}

const counted = new Map<string, number>();

/** How many values a cross-check compares; each is run once. */
export function comparedBy({ title, compare }: CrossCheck): number {
  const known = counted.get(title) ?? compare().length;
  counted.set(title, known);
  return known;
}

function coverage(
  name: string,
  uses: readonly Uses[],
  used: (each: Uses) => boolean,
  checks: readonly CrossCheck[],
): Coverage {
  const here = uses.filter(used).map(({ example }) => example);
  return {
    name,
    read: here.filter(({ seen }) => seen !== 'not read').map(({ id }) => id),
    recomputed: here.filter(({ seen }) => seen === 'not read').map(({ id }) => id),
    crossChecks: checks.map(({ title }) => title),
    compared: checks.reduce((sum, check) => sum + comparedBy(check), 0),
  };
}

/** What of the trade library stands against the outside, by running every example and every cross-check. */
export function proofCoverage(): {
  readonly functions: readonly Coverage[];
  readonly tables: readonly TableCoverage[];
} {
  const uses = examples.map(usesOf);
  const names = tradeFunctions.flatMap(({ name }) =>
    name === 'circuit' ? [circuitName(undefined), ...circuitKinds.map(circuitName)] : [name],
  );
  return {
    functions: names.map((name) =>
      coverage(
        name,
        uses,
        ({ functions }) => functions.has(name),
        crossChecks.filter(({ functions = [] }) => functions.includes(name)),
      ),
    ),
    tables: subjects.map((subject) => {
      const rows = loadRows(subject, subject.files, '2023');
      return {
        ...coverage(
          subject.id,
          uses,
          ({ tables }) => tables.has(subject.id),
          crossChecks.filter(({ tables = [] }) => tables.includes(subject.id)),
        ),
        title: subject.files[subject.files.length - 1].title,
        rows: rows.length,
        fromMemory: rows.filter(({ found }) => found.source.basis === 'memory').length,
      };
    }),
  };
}

export interface Collection {
  readonly name: string;
  readonly all: number;
  readonly whole: number;
  readonly inPart: number;
  readonly notYet: number;
}

/** How far each collection of published answers runs. */
export function collectionCounts(): Collection[] {
  return collections.map(({ name, id }) => {
    const running = examples.filter((example) => id.test(example.id));
    const partly = new Set(notYet.filter(({ part }) => part !== undefined).map((each) => each.id));
    const open = notYet.filter((each) => each.part === undefined && id.test(each.id)).length;
    const inPart = running.filter((example) => partly.has(example.id)).length;
    return { name, all: running.length + open, whole: running.length - inPart, inPart, notYet: open };
  });
}
