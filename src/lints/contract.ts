import type { CallRecord, Node, Program, StatementResult, SyntaxTree } from '../language';
import type { Diagnostic, Fix, LintId, RelatedPlace, Severity, Span } from '../text';
import type { SheetView } from './sheet-view';

/** A lint is one object in one file; the file's name is its id. */
export interface Lint {
  /** Kebab-case, named for the fault. */
  readonly id: LintId;
  readonly summary: string;
  /** The rule behind it and why it matters, two or three sentences. */
  readonly why: string;
  /**
   * Standard and section, or the physics. Sections of the NEC are those of its latest edition here; a page shows them as
   * the edition in force numbers them.
   */
  readonly sources: readonly string[];
  readonly severity: Severity;
  /** When it says nothing although the numbers look alike. */
  readonly silent: readonly string[];
  /** What its fixes do, in one sentence; absent when it offers none. */
  readonly fix?: string;
  /** Executed by the tests: each bad one gives exactly one finding of this lint, each good one none of any. */
  readonly examples: { readonly bad: readonly string[]; readonly good: readonly string[] };
  /** Kinds of syntax that a statement must hold for the lint to have anything to look at. */
  readonly looksAt: readonly Node[];
  /** True for a question about the sheet as a whole: it is put once, at the first place where it arises. */
  readonly once?: true;
  /**
   * Looks at one statement at a time; reads the facts that functions left, computes none again. Absent where the
   * language itself finds the fault before anything runs, under this id: then the object is its page.
   */
  readonly check?: (statement: LintedStatement, report: Report) => void;
  /** True where a fault lies in what the file keeps beside its cells. Its examples are whole sheets. */
  readonly inFile?: true;
}

export interface LintedStatement {
  readonly program: Program;
  readonly cell: string;
  readonly tree: SyntaxTree;
  /** Syntax node of the statement. */
  readonly node: number;
  readonly result: StatementResult;
  readonly calls: readonly CallRecord[];
  /** What only the whole sheet tells. */
  readonly sheet: SheetView;
  /** For an `allow` statement: the lints whose findings it silenced. Absent for every other statement. */
  readonly silenced?: ReadonlySet<string>;
  /** For an `allow` statement: what lints are called. */
  readonly lintIds?: ReadonlySet<string>;
}

/** Message, span and fix are born in one call. `severity` replaces the lint's own where a case weighs differently. */
export type Report = (finding: {
  readonly span: Span;
  readonly message: string;
  readonly severity?: Severity;
  readonly fixes?: readonly Fix[];
  readonly related?: readonly RelatedPlace[];
}) => void;

export const defineLint = (lint: Omit<Lint, 'id'> & { readonly id: string }): Lint => ({
  ...lint,
  id: lint.id as LintId,
});

/** A lint's finding as a diagnostic: `code` is the lint's id. */
export type Finding = Diagnostic;
