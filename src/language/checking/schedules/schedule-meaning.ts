import type { Diagnostic, Span } from '../../../text';
import type { Meaning } from '../meaning';
import type { Type } from '../type';

/** What checking found out about a schedule: its columns, typed from all of their cells, and what is wrong with some. */
export interface ScheduleMeaning {
  readonly name: string;
  readonly rows: number;
  /** Of the tree that the cells stand in. */
  readonly cells: Meaning;
  readonly written: readonly WrittenColumn[];
  readonly computed: readonly ComputedColumn[];
  /** Of single rows and columns; the others work beside them. */
  readonly problems: readonly Diagnostic[];
  /** The row in words, with its first text: ``row 3 (`P3`)``. */
  rowName(row: number): string;
  /** A problem in the tree of the cells, moved to where the sheet shows it. */
  placed(problem: Diagnostic, row: number): Diagnostic;
  /** Where a row stands in the tree of the cells. */
  rowSpan(row: number): Span;
}

export interface WrittenColumn {
  readonly name: string;
  /** Of each cell; unknown where no cell says. */
  readonly type: Type;
  /** The expression in each row; -1 where there is none that can be used. */
  readonly nodes: Int32Array;
  /** What the cells of a column of words say; else absent. */
  readonly words?: readonly (string | undefined)[];
  /** Why rows have no value here. */
  readonly missing: ReadonlyMap<number, MissingCell>;
}

export interface MissingCell {
  readonly why: string;
  /** True where the author left the cell empty, and nothing is wrong with it. */
  readonly isEmpty: boolean;
}

export interface ComputedColumn {
  readonly name: string;
  readonly nameNode: number;
  readonly type: Type;
  readonly expression: number;
  /** Names of the columns that the formula reads. */
  readonly reads: readonly string[];
}
