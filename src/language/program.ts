import type { Diagnostic, ProblemCode, Span } from '../text';
import type { Type } from './checking/type';
import type { Trace } from './evaluation/trace';
import type { Value, Verdict } from './evaluation/value';
import type { Fact, Library } from './library';
import type { SyntaxTree } from './syntax/tree';

/** What one statement came to. */
export interface StatementResult {
  readonly cell: string;
  /** Index in the cell's `statements`. */
  readonly index: number;
  readonly span: Span;
  readonly kind: 'definition' | 'show' | 'check' | 'other';
  /** The name defined, with its place. */
  readonly name?: string;
  readonly nameSpan?: Span;
  /** Absent when there is none: see `missing`. */
  readonly value?: Value;
  readonly verdict?: Verdict;
  /** The text of a check, or its source when it has none. */
  readonly label?: string;
  /** The comment on its line. */
  readonly remark?: string;
  /** Where the value comes from, as far as the form of the statement tells. */
  readonly origin: ValueOrigin;
  /** The results that this one was worked out from, in the order they stand in it; of other sheets too. */
  readonly needs: readonly StatementResult[];
  /** For a name taken from another sheet: the file as this sheet names it, and what it came to there. */
  readonly taken?: { readonly file: string; readonly result?: StatementResult };
  /** Names that have no value because of an error elsewhere, and that this statement needs. */
  readonly missing?: readonly string[];
  /** Built anew each time it is asked for. */
  trace(): Trace;
  /** Each call of a library function in this statement, in the order they ran; those of a schedule are in its rows. */
  calls(): readonly CallRecord[];
  /** For a schedule: its rows with the calls of each, where there are any. */
  rows?(): Iterable<RowResult>;
}

/** One row of a schedule, as lints read it: a statement of its own, in the tree that its cells stand in. */
export interface RowResult {
  readonly tree: SyntaxTree;
  /** A node of the row. */
  readonly node: number;
  /** All that stands in the row. */
  readonly span: Span;
  readonly calls: readonly CallRecord[];
  /** A problem of the row, moved to where the sheet shows it. */
  placed(problem: Diagnostic): Diagnostic;
}

/** `given` is written there as it is; `measured` has a doubt of its own; `taken` is another sheet's. */
export type ValueOrigin = 'given' | 'input' | 'measured' | 'taken' | 'computed';

/** One call of a library function, as lints read it. */
export interface CallRecord {
  readonly function: string;
  readonly cell: string;
  readonly span: Span;
  /** The function's name where it stands. */
  readonly nameSpan: Span;
  readonly arguments: ReadonlyMap<string, ArgumentRecord>;
  /** Absent when the call failed. */
  readonly result?: Value;
  readonly facts: readonly Fact[];
  /** Syntax node of the call (Call or BlockCall) in the cell's tree; of the row where a schedule's row is the call. */
  readonly node: number;
  /** True where a schedule is laid out as such calls and nobody wrote one: what it chooses for itself is used nowhere. */
  readonly isImplied?: true;
  /** Why such a row comes to no result, though it has what the calls are known by; the first such row alone has it. */
  readonly unjudged?: string;
  /** For a call of a schedule's row: the cells that its arguments stand in, by parameter. */
  readonly argumentNodes?: ReadonlyMap<string, number>;
}

export interface ArgumentRecord {
  readonly value: Value;
  /** False when the default was taken; then `span` is the call's name. */
  readonly given: boolean;
  readonly span: Span;
}

/** What a name stands for, for hovers, completion, definition and references. */
export interface NameInfo {
  readonly name: string;
  readonly cell: string;
  readonly definition: Span;
  readonly type: Type;
  readonly references: readonly { readonly cell: string; readonly span: Span }[];
  readonly statement: number;
  /** What its statement came to. */
  readonly result?: StatementResult;
}

/** A value for an input: a number in the coherent SI unit (1 and 0 for yes and no), or what an object slot holds. */
export type InputValue = number | { readonly object: unknown };

/** An input whose value is to be varied. */
export interface VariedInput {
  readonly name: string;
  /** Unknown where the sheet has no such input, or its line has an error. */
  readonly type: Type;
  readonly bounds?: { readonly low: string; readonly high: string };
  /** True for a number outside the bounds. */
  isOutside(number: number): boolean;
}

/** A named result that is no list, or a field of a record: `kiln.drop`. */
export interface NamedScalar {
  readonly name: string;
  readonly type: Type;
  /** False when no varied input can change it. */
  readonly varies: boolean;
}

/** A program run for case after case, with nothing parsed or checked anew. */
export interface Variation {
  readonly inputs: readonly VariedInput[];
  /** The named results other than the varied inputs, in order of place. */
  readonly outputs: readonly NamedScalar[];
  /** The cells whose results a case may change. */
  readonly cells: readonly string[];
  /** Runs one case, with a value for each input. */
  run(values: readonly InputValue[]): void;
  /** The number of an output in the coherent SI unit after `run`; not finite where it has none or is no number. */
  number(output: number): number;
  /** The value of an output after `run`. */
  value(output: number): Value | undefined;
  /**
   * Runs many cases of numbers at once; undefined where something in the sheet must be run case by case. A case with a
   * result that is not finite is to be run by itself to learn why.
   */
  readonly columns?: VariedColumns;
  /** True when a library function runs anew for each case, so that lints may find something else in each. */
  readonly callsLibrary: boolean;
}

/** Results of many cases, one column each. */
export interface VariedColumns {
  /** `inputs` holds a column of numbers for each input, of which the first `count` count. */
  run(inputs: readonly Float64Array[], count: number): void;
  /** The column of an output that varies. */
  output(output: number): Float64Array;
  /** The checks that vary: 1 where one passes, 0 where it does not. */
  readonly checks: readonly { readonly label: string; readonly column: Float64Array }[];
}

/** A sheet that another one takes names from. The same object while nothing about it has changed. */
export interface GivenSheet {
  /** Tells one sheet from another, whichever way it is named. */
  readonly path: string;
  readonly library: Library;
  /** The calculation cells. Their ids are like no other sheet's. */
  readonly cells: readonly { readonly id: string; readonly text: string }[];
  /** Where a stretch of a cell stands in the file. */
  place(cell: string, span: Span): { readonly path: string; readonly line: number };
}

/** Why a sheet cannot be taken from; told at its name. */
export interface SheetProblem {
  readonly problem: { readonly code: ProblemCode; readonly message: string };
}

/** Rows of a file that a schedule is read from. The same object while the file has not changed. */
export interface GivenRows {
  readonly path: string;
  /** The first row, which names the columns. */
  readonly head: GivenRow;
  readonly rows: readonly GivenRow[];
}

export interface GivenRow {
  /** What each cell holds, without white space around it; a row may have fewer or more than the first one. */
  readonly texts: readonly string[];
  /** Where each cell begins in the file, counted from 1. */
  readonly places: readonly { readonly line: number; readonly column: number }[];
}

/** How a program comes by the sheets that its `use` lines name, and the rows of its schedules. */
export interface OtherSheets {
  /** Path of the program's own sheet. */
  readonly path: string;
  /** The path of the sheet that the one at `from` calls `file`. */
  find(file: string, from: string): { readonly path: string } | SheetProblem;
  /** The sheet at a path that was found. Asked anew with each update. */
  open(path: string): GivenSheet | SheetProblem;
  /** The rows of the file that the sheet at `from` calls `file`. Asked anew with each update. */
  rows(file: string, from: string): GivenRows | SheetProblem;
}

/** The text of a cell. An aside is none of the sheet's own: it looks at names, and is not among those that use them. */
export interface CellText {
  readonly id: string;
  readonly text: string;
  readonly aside?: true;
}

/**
 * A sheet's cells as one program: parsed, bound, checked, compiled and run. Changing one cell does again only what
 * hangs on it; the outcome equals that of a new program with the same cells.
 */
export interface Program {
  readonly library: Library;
  /** Cells in order. Texts that did not change are not parsed again. Returns the ids of cells whose results or diagnostics changed. */
  update(cells: readonly CellText[]): ReadonlySet<string>;
  tree(cell: string): SyntaxTree | undefined;
  results(cell: string): readonly StatementResult[];
  diagnostics(cell: string): readonly Diagnostic[];
  names(): ReadonlyMap<string, NameInfo>;
  /** One of them. */
  name(text: string): NameInfo | undefined;
  /**
   * The program with other values in these of its inputs. What it tells of results is then of the case last run, until
   * the next update. `casesAtOnce` is how many its columns hold.
   */
  vary(inputs: readonly string[], casesAtOnce?: number): Variation;
  /** The type of the expression at a node, for hovers. */
  typeAt(cell: string, node: number): Type | undefined;
  /** The value of the expression at a node, where it stands alone (a name, a member, a literal); for hovers. */
  valueAt(cell: string, node: number): Value | undefined;
}
