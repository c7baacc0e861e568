import type { Edit } from './edit';
import type { LintId, ProblemCode } from './problems';
import type { Span } from './span';

/** How much a problem weighs: only `error` makes a sheet not ok; `hint` asks a question. */
export type Severity = 'error' | 'warning' | 'information' | 'hint';

/** A change that mends a problem. `safe` ones may be applied together without a person looking at each. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
  readonly safe: boolean;
}

/** Another place that helps to understand a problem; `cell` is absent when it is the same cell. */
export interface RelatedPlace {
  readonly cell?: string;
  /** Set for a place in another sheet, whose line counts from 1; `span` is then of no use to this sheet. */
  readonly file?: { readonly path: string; readonly line: number };
  readonly span: Span;
  readonly message: string;
}

/**
 * The one shape of every problem, from lexer to lint.
 * `message` says what was found, why it is wrong or what was expected, and what to do.
 */
export interface Diagnostic {
  /** Kebab-case, named for the fault; the same id in the editor, the command line and the reference page. A problem is declared in `problems/`. */
  readonly code: ProblemCode | LintId;
  readonly severity: Severity;
  readonly span: Span;
  readonly message: string;
  readonly fixes?: readonly Fix[];
  readonly related?: readonly RelatedPlace[];
}
