import type { CallRecord, Program, StatementResult, SyntaxTree } from '../language';
import type { Diagnostic, Fix, RelatedPlace, Severity, Span } from '../text';

/** A lint is one object in one file; the file's name is its id. */
export interface Lint {
  /** Kebab-case, named for the fault. */
  readonly id: string;
  readonly summary: string;
  /** The rule behind it and why it matters, two or three sentences. */
  readonly why: string;
  /** Standard and section, or the physics; editions named where they differ. */
  readonly sources: readonly string[];
  readonly severity: Severity;
  /** When it says nothing although the numbers look alike. */
  readonly silent: readonly string[];
  /** Executed by the tests: each bad one gives exactly one finding of this lint, each good one none of any. */
  readonly examples: { readonly bad: readonly string[]; readonly good: readonly string[] };
  /** Looks at one statement at a time; reads the facts that functions left, computes none again. */
  readonly check: (statement: LintedStatement, report: Report) => void;
}

export interface LintedStatement {
  readonly program: Program;
  readonly cell: string;
  readonly tree: SyntaxTree;
  /** Syntax node of the statement. */
  readonly node: number;
  readonly result: StatementResult;
  readonly calls: readonly CallRecord[];
  /** For an `allow` statement: the lints whose findings it silenced. Absent for every other statement. */
  readonly silenced?: ReadonlySet<string>;
}

/** Message, span and fix are born in one call. `severity` replaces the lint's own where a case weighs differently. */
export type Report = (finding: {
  readonly span: Span;
  readonly message: string;
  readonly severity?: Severity;
  readonly fixes?: readonly Fix[];
  readonly related?: readonly RelatedPlace[];
}) => void;

export const defineLint = (lint: Lint): Lint => lint;

/** A lint's finding as a diagnostic: `code` is the lint's id. */
export type Finding = Diagnostic;
