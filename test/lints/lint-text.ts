import { createProgram, type Library, type Program } from '../../src/language';
import { createLibrary } from '../../src/library';
import { type LintOptions, lint } from '../../src/lints';
import type { Diagnostic } from '../../src/text';

const made = createLibrary({ edition: 'NEC 2023' });
if ('problem' in made) {
  throw new Error(made.problem);
}
export const library: Library = made;

/** A program of cells named by their texts' places: `0`, `1`, … */
export function programOf(...texts: readonly string[]): Program {
  const program = createProgram(library);
  program.update(texts.map((text, i) => ({ id: String(i), text })));
  return program;
}

/** The findings in the first of the texts, each a cell of one sheet. */
export function findingsIn(texts: readonly string[], options?: LintOptions): Diagnostic[] {
  const cells = texts.map((_, i) => String(i));
  return [...(lint(programOf(...texts), cells, options).findings.get('0') ?? [])];
}

/** What the language itself finds wrong in one cell, so that no case passes because its text is not understood. */
export const errorsIn = (text: string): string[] =>
  programOf(text)
    .diagnostics('0')
    .filter(({ severity }) => severity === 'error')
    .map(({ code, message }) => `${code}: ${message}`);

/** What the language finds before anything runs, for the faults whose page is a lint's. */
export const languageFindingsIn = (text: string): Diagnostic[] => [...programOf(text).diagnostics('0')];
