import type { Diagnostic, Span } from '../text';
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
  /** For a name taken from another sheet: the file as this sheet names it, and what it came to there. */
  readonly taken?: { readonly file: string; readonly result?: StatementResult };
  /** Names that have no value because of an error elsewhere, and that this statement needs. */
  readonly missing?: readonly string[];
  /** Built anew each time it is asked for. */
  trace(): Trace;
  /** Each call of a library function in this statement, in the order they ran. */
  calls(): readonly CallRecord[];
}

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
  /** Syntax node of the call (Call or BlockCall) in the cell's tree. */
  readonly node: number;
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
  readonly problem: { readonly code: string; readonly message: string };
}

/** How a program comes by the sheets that its `use` lines name. */
export interface OtherSheets {
  /** Path of the program's own sheet. */
  readonly path: string;
  /** The path of the sheet that the one at `from` calls `file`. */
  find(file: string, from: string): { readonly path: string } | SheetProblem;
  /** The sheet at a path that was found. Asked anew with each update. */
  open(path: string): GivenSheet | SheetProblem;
}

/**
 * A sheet's cells as one program: parsed, bound, checked, compiled and run. Changing one cell does again only what
 * hangs on it; the outcome equals that of a new program with the same cells.
 */
export interface Program {
  readonly library: Library;
  /** Cells in order. Texts that did not change are not parsed again. Returns the ids of cells whose results or diagnostics changed. */
  update(cells: readonly { readonly id: string; readonly text: string }[]): ReadonlySet<string>;
  tree(cell: string): SyntaxTree | undefined;
  results(cell: string): readonly StatementResult[];
  diagnostics(cell: string): readonly Diagnostic[];
  names(): ReadonlyMap<string, NameInfo>;
  /** The type of the expression at a node, for hovers. */
  typeAt(cell: string, node: number): Type | undefined;
  /** The value of the expression at a node, where it stands alone (a name, a member, a literal); for hovers. */
  valueAt(cell: string, node: number): Value | undefined;
}
