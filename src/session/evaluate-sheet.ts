import type { Block } from '../display';
import type { Program, StatementResult, Value, Verdict } from '../language';
import type { Caution } from '../lints';
import {
  FilePositions,
  type FrontMatter,
  type PlacedDiagnostic,
  readSheet,
  type SheetCell,
  type SheetFile,
} from '../notebook';
import type { TableFile } from '../tables';
import type { Severity } from '../text';
import type { FolderFiles } from './folder-files';
import type { LiveValue } from './live-prose';
import { SheetSession } from './sheet-session';

/** A whole sheet, evaluated. Lines and columns count from 1 in the file. */
export interface SheetEvaluation {
  readonly file: SheetFile;
  /** The file as text, as its lines are counted. */
  readonly text: string;
  readonly frontMatter: FrontMatter;
  readonly cells: readonly EvaluatedCell[];
  /** Every named result, in order of place. */
  readonly values: ReadonlyMap<string, Value>;
  readonly checks: readonly CheckOutcome[];
  /** Problems of file, front matter, language and lints, in order of place. */
  readonly diagnostics: readonly PlacedDiagnostic[];
  /** Findings that an `allow` accepts, with the reasons: for a report. */
  readonly allowed: readonly PlacedAllowance[];
  /** All that apply; a report shows them whether or not they are acknowledged. */
  readonly cautions: readonly Caution[];
  /** True when the sheet says that they are read: a terminal then leaves them out. */
  readonly cautionsAcknowledged: boolean;
  /** The calculation cells as a program; a cell's id is its index in `cells`. */
  readonly program: Program;
  /** True when there is no error and every check is a plain yes. */
  readonly ok: boolean;
}

/** A finding that the sheet accepts, and why. */
export interface PlacedAllowance {
  readonly lint: string;
  readonly reason: string;
  /** The finding as it would have been told. */
  readonly finding: PlacedDiagnostic;
}

export interface EvaluatedCell {
  readonly cell: SheetCell;
  readonly results: readonly StatementResult[];
  readonly blocks: readonly Block[];
  /** For prose: its Markdown with the live values in place, and those values. */
  readonly prose?: { readonly markdown: string; readonly live: readonly LiveValue[] };
}

export interface CheckOutcome {
  readonly text: string;
  /** `cannot tell` also where an error kept the check from being evaluated. */
  readonly verdict: Verdict;
  readonly line: number;
}

/** Evaluates a sheet file: a pure function of its bytes (or text), the severities, and the files beside it. */
export function evaluateSheet(
  source: Uint8Array | string,
  options: {
    readonly tableFiles?: readonly TableFile[];
    /** The other files that the sheet may name. */
    readonly files?: FolderFiles;
    readonly severities?: Readonly<Record<string, Severity | 'off'>>;
  } = {},
): SheetEvaluation {
  const file = readSheet(typeof source === 'string' ? new TextEncoder().encode(source) : source);
  const positions = new FilePositions(file);
  const session = new SheetSession(options);
  session.severities = options.severities ?? {};
  const cells = file.editable ? file.cells : [];
  session.update(cells.map((cell, index) => ({ id: String(index), kind: cell.kind, text: cell.text })));

  const evaluated = cells.map((cell, index) => {
    const calculated = cell.kind === 'calculation';
    return {
      cell,
      results: calculated ? session.results(String(index)) : [],
      blocks: calculated ? session.outputs(String(index)) : [],
      ...(!calculated && {
        prose: { markdown: session.shownProse(String(index)), live: session.liveValues(String(index)) },
      }),
    };
  });
  const diagnostics = [
    ...file.notices,
    ...cells.flatMap((_, index) =>
      session.diagnostics(String(index)).map((diagnostic) => positions.inFile(index, diagnostic, Number)),
    ),
  ];
  const checks = evaluated.flatMap(({ results }, index) =>
    results
      .filter((result) => result.kind === 'check')
      .map((result) => ({
        text: result.label ?? '',
        verdict: result.verdict ?? ('cannot tell' as const),
        line: positions.at(positions.offset(index, result.span.start)).line,
      })),
  );
  return {
    file,
    text: positions.text,
    frontMatter: session.frontMatter,
    cells: evaluated,
    values: valuesOf(evaluated),
    checks,
    diagnostics: diagnostics.sort((a, b) => a.span.start - b.span.start).map((found) => positions.place(found)),
    allowed: session.allowed().map(({ allowance, finding }) => ({
      lint: allowance.lint,
      reason: allowance.reason,
      finding: positions.place(positions.inFile(Number(allowance.cell), finding, Number)),
    })),
    cautions: session.cautions(),
    cautionsAcknowledged: session.cautionsAcknowledged,
    program: session.program,
    ok: checks.every((check) => check.verdict === 'yes') && diagnostics.every(({ severity }) => severity !== 'error'),
  };
}

function valuesOf(cells: readonly EvaluatedCell[]): Map<string, Value> {
  const values = new Map<string, Value>();
  for (const { results } of cells) {
    for (const { name, value } of results) {
      if (name !== undefined && value) {
        values.set(name, value);
      }
    }
  }
  return values;
}
