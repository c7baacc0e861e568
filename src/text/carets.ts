import type { Diagnostic } from './diagnostic';
import { LineIndex } from './line-index';

/** The text with each problem marked under its line: carets below what is at fault, then what `said` gives. */
export function withCarets(
  text: string,
  diagnostics: readonly Diagnostic[],
  said = ({ code, message }: Diagnostic) => `${code}: ${message}`,
): string {
  const index = new LineIndex(text);
  const lines = text.split('\n').map((line) => [line]);
  for (const problem of diagnostics) {
    const from = index.at(problem.span.start);
    const to = index.at(problem.span.end);
    const width = to.line === from.line ? Math.max(1, to.column - from.column) : 1;
    lines[from.line - 1].push(`${' '.repeat(from.column - 1)}${'^'.repeat(width)} ${said(problem)}`.trimEnd());
  }
  return lines.flat().join('\n');
}
