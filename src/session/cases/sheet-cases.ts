import { showValue, withoutNoise } from '../../display';
import {
  commonType,
  describe,
  type InputValue,
  type NamedScalar,
  nearest,
  type Value,
  type Variation,
  type VariedColumns,
  type Verdict,
} from '../../language';
import type { SheetCell } from '../../notebook';
import { readSheet } from '../../notebook';
import type { TableFile } from '../../tables';
import { fromBase, parseUnit, type Unit } from '../../units';
import type { FolderFiles } from '../folder-files';
import { writeInputs } from '../set-inputs';
import { SheetSession } from '../sheet-session';
import { InputReader, isBareNumber, type ReadInput } from './input-reader';

/** One row of results: the inputs as they were given, then the results; an empty text where there is none. */
export interface CaseOutcome {
  readonly cells: readonly (string | number)[];
  /** What is wrong with the case, each once: a value that cannot be read, an error, a check that does not pass. */
  readonly problems: readonly string[];
}

/**
 * A sheet run for case after case. The header names inputs, `run` or `run (m)`; each row holds a value for each. The
 * sheet is parsed and checked once. Where it does nothing but arithmetic, many cases are run at once.
 */
export class SheetCases {
  /** The inputs as the header names them, then each result with its unit: `drop (V)`. */
  readonly header: readonly string[];
  private variation: Variation;
  private readonly session: SheetSession;
  private readonly cells: readonly SheetCell[];
  private readonly outputs: readonly NamedScalar[];
  private readonly readers: readonly InputReader[];
  /** True once a case has come out clean: what does not vary is then known to be well, and columns tell the rest. */
  private isKnownGood = false;

  /** A problem where the header names what is no input. */
  static open(
    bytes: Uint8Array,
    header: readonly string[],
    options: { readonly files?: FolderFiles; readonly tableFiles?: readonly TableFile[] } = {},
  ): SheetCases | { readonly problem: string } {
    const { inputs } = writeInputs(bytes, new Map());
    const columns: { name: string; unit?: Unit }[] = [];
    for (const text of header) {
      const column = readColumn(text);
      if ('problem' in column) {
        return column;
      }
      if (!inputs.includes(column.name)) {
        const near = nearest(column.name, inputs);
        const known = inputs.length > 0 ? `Inputs are: ${inputs.join(', ')}.` : 'The sheet has no `input` line.';
        return {
          problem: `\`${column.name}\` is no input of the sheet. ${near ? `Did you mean \`${near}\`?` : known}`,
        };
      }
      if (columns.some(({ name }) => name === column.name)) {
        return { problem: `\`${column.name}\` stands there twice: keep one of the columns.` };
      }
      columns.push(column);
    }
    const cases = new SheetCases(bytes, header, columns, options);
    const problem = cases.inputProblem();
    return problem === undefined ? cases : { problem };
  }

  /** What keeps an input from being varied. */
  private inputProblem(): string | undefined {
    for (const [i, { name, type }] of this.variation.inputs.entries()) {
      const { unit } = this.columns[i];
      if (type.kind === 'unknown') {
        return `\`${name}\` has an error in the sheet. \`kilofoot check\` tells which.`;
      }
      if (unit && !commonType(type, { kind: 'quantity', quantity: unit.type, unit })) {
        return `\`${name}\` is ${describe(type)} and cannot be given in ${unit.symbol}.`;
      }
    }
    return undefined;
  }

  private constructor(
    private readonly bytes: Uint8Array,
    header: readonly string[],
    private readonly columns: readonly { name: string; unit?: Unit }[],
    options: { readonly files?: FolderFiles; readonly tableFiles?: readonly TableFile[] },
  ) {
    this.session = new SheetSession(options);
    this.cells = readSheet(bytes).cells;
    this.variation = this.vary(this.cells);
    this.outputs = this.variation.outputs;
    this.header = [...header.map((text) => text.trim()), ...this.outputs.map(headingOf)];
    this.readers = columns.map(
      ({ unit }, i) => new InputReader(this.variation.inputs[i], this.session.program.library, unit),
    );
  }

  /** Runs rows in order; a row of another length than the header is a problem of that row alone. */
  run(rows: readonly (readonly string[])[]): CaseOutcome[] {
    const outcomes = new Array<CaseOutcome>(rows.length);
    let batch: { readonly at: number; readonly values: readonly number[] }[] = [];
    const flush = () => {
      this.runColumns(batch, rows, outcomes);
      batch = [];
    };
    for (const [at, row] of rows.entries()) {
      const read = this.read(row);
      if ('problems' in read) {
        outcomes[at] = this.outcome(row, undefined, read.problems);
      } else if (read.every((cell) => 'value' in cell)) {
        const values = read.map(({ value }) => value);
        if (this.isKnownGood && this.variation.columns && values.every((value) => typeof value === 'number')) {
          batch.push({ at, values });
          if (batch.length === casesAtOnce) {
            flush();
          }
        } else {
          outcomes[at] = this.runOne(row, values);
        }
      } else {
        flush(); // What follows changes the program, and these rows belong to the one that stands.
        outcomes[at] = this.runText(row);
      }
    }
    flush();
    return outcomes;
  }

  private vary(cells: readonly SheetCell[]): Variation {
    this.session.update(cells.map(({ kind, text }, index) => ({ id: String(index), kind, text })));
    return this.session.program.vary(this.columns.map(({ name }) => name));
  }

  private read(row: readonly string[]): readonly ReadInput[] | { readonly problems: readonly string[] } {
    if (row.length !== this.readers.length) {
      const count = (n: number) => (n === 1 ? '1 cell' : `${n} cells`);
      return { problems: [`${count(row.length)} in this row, ${count(this.readers.length)} in the header.`] };
    }
    const read = this.readers.map((reader, i) => reader.read(row[i]));
    const problems = read.flatMap((cell) => ('problem' in cell ? [cell.problem] : []));
    return problems.length > 0 ? { problems } : read;
  }

  /** One case by itself: all that the program tells, the findings of lints included. */
  private runOne(row: readonly string[], values: readonly InputValue[]): CaseOutcome {
    this.variation.run(values);
    if (this.variation.callsLibrary) {
      this.session.lintCase(this.variation.cells);
    }
    const problems = this.problems();
    this.isKnownGood ||= problems.length === 0;
    return this.outcome(row, this.variation, problems);
  }

  /** A case with a value that only the sheet can read, such as a reading by one of its meters. */
  private runText(row: readonly string[]): CaseOutcome {
    const texts = new Map(
      this.columns.map(({ name }, i) => {
        const text = row[i].trim();
        const { unit } = this.readers[i];
        return [name, unit && isBareNumber(text) ? `${text} ${unit.symbol}`.trim() : text];
      }),
    );
    const there = this.vary(readSheet(writeInputs(this.bytes, texts).bytes).cells);
    const outcome = this.outcome(row, there, this.problems());
    this.variation = this.vary(this.cells);
    return outcome;
  }

  private runColumns(
    batch: readonly { readonly at: number; readonly values: readonly number[] }[],
    rows: readonly (readonly string[])[],
    outcomes: CaseOutcome[],
  ): void {
    const { columns } = this.variation;
    if (batch.length === 0 || !columns) {
      return;
    }
    const inputs = this.columns.map((_, i) => Float64Array.from(batch, ({ values }) => values[i]));
    columns.run(inputs, batch.length);
    const read = this.outputs.map((output, i) => {
      const constant = output.varies ? undefined : this.cellOf(this.variation, i);
      return constant === undefined ? { ...output, column: columns.output(i) } : constant;
    });
    for (const [k, { at, values }] of batch.entries()) {
      const cells: (string | number)[] = rows[at].map((cell) => cell.trim());
      let isFinite = columns.checks.every(({ column }) => column[k] - column[k] === 0);
      for (const output of read) {
        if (typeof output !== 'object') {
          cells.push(output);
          continue;
        }
        const number = output.column[k];
        isFinite &&= number - number === 0;
        cells.push(
          output.type.kind === 'quantity' ? withoutNoise(fromBase(number, output.type.unit)) : yesOrNo(number),
        );
      }
      outcomes[at] = isFinite ? { cells, problems: failed(columns.checks, k) } : this.runOne(rows[at], values);
    }
  }

  private outcome(row: readonly string[], variation: Variation | undefined, problems: readonly string[]): CaseOutcome {
    const given = this.columns.map((_, i) => (row[i] ?? '').trim());
    return { cells: [...given, ...this.outputs.map((_, i) => this.cellOf(variation, i))], problems };
  }

  /** A result in the unit of its heading. */
  private cellOf(variation: Variation | undefined, output: number): string | number {
    const { name, type } = this.outputs[output];
    const at = variation?.outputs[output]?.name === name ? output : -1;
    const value = at < 0 ? undefined : variation!.value(at);
    return value === undefined
      ? ''
      : value.kind === 'quantity' && type.kind === 'quantity'
        ? withoutNoise(fromBase(value.base, type.unit))
        : textOf(value);
  }

  private problems(): string[] {
    const problems = new Set<string>();
    for (const [index, { kind }] of this.cells.entries()) {
      const cell = String(index);
      for (const { severity, message } of this.session.diagnostics(cell)) {
        if (severity === 'error') {
          problems.add(message);
        }
      }
      for (const result of kind === 'calculation' ? this.session.results(cell) : []) {
        if (result.kind === 'check' && result.verdict !== 'yes') {
          problems.add(failing(result.label, result.verdict));
        }
      }
    }
    return [...problems];
  }
}

/** So many cases are run at once; what is kept of them at any time does not grow with their number. */
export const casesAtOnce = 1024;

function failed(checks: VariedColumns['checks'], at: number): readonly string[] {
  const failures = checks.filter(({ column }) => column[at] !== 1);
  return failures.length === 0 ? noProblems : failures.map(({ label }) => failing(label, 'no'));
}

const failing = (label = '', verdict: Verdict | undefined): string =>
  `Check "${label}": ${verdict ?? 'no answer, because of an error'}.`;

const noProblems: readonly string[] = [];

const yesOrNo = (number: number): string => (number === 1 ? 'yes' : number === 0 ? 'no' : 'cannot tell');

const textOf = (value: Value): string =>
  value.kind === 'boolean'
    ? yesOrNo(value.value === 'cannot tell' ? 0.5 : Number(value.value))
    : value.kind === 'text'
      ? value.value
      : showValue(value);

const headingOf = ({ name, type }: NamedScalar): string =>
  type.kind === 'quantity' && type.unit.symbol !== '' ? `${name} (${type.unit.symbol})` : name;

/** `run` or `run (m)`. */
function readColumn(text: string): { name: string; unit?: Unit } | { problem: string } {
  const [, name, unitText] = /^\s*(.*?)\s*(?:[([](.*)[)\]])?\s*$/s.exec(text)!;
  if (unitText === undefined) {
    return { name };
  }
  const unit = parseUnit(unitText.trim());
  return 'problem' in unit ? { problem: `${text.trim()}: ${unit.problem}` } : { name, unit };
}
