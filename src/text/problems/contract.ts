/**
 * What is to be known of a problem beside its message: the same in the editor, in `kilofoot explain` and in
 * `docs/problems.md`. Declared once for each code; a code that is not declared here cannot be reported.
 */
export interface Problem {
  /** What it means, in one sentence. */
  readonly means: string;
  /** Why it is not let pass. */
  readonly why: string;
  /** What to do about it. */
  readonly remedy: string;
  readonly example: ProblemExample;
}

/** Where a page shows the problem: executed when the page is made, so that place, message and fix are the true ones. */
export type ProblemExample =
  /** The text of one calculation cell. */
  | string
  /** A whole sheet, with the texts of the files beside it by their names. */
  | { readonly sheet: string; readonly beside?: Readonly<Record<string, string>> }
  /** What no sheet can hold, in words, and what is said then; a test brings it about. */
  | { readonly situation: string; readonly says: string };

/** The problems of one part of the language, by their codes. */
export interface ProblemGroup<Code extends string> {
  readonly title: string;
  readonly problems: Readonly<Record<Code, Problem>>;
}

export const defineProblems = <Code extends string>(
  title: string,
  problems: Readonly<Record<Code, Problem>>,
): ProblemGroup<Code> => ({ title, problems });
