import { type Diagnostic, LineIndex } from '../../../src/text';

const caretLine = /^ *\^+ [a-z-]+: /;

/** The cell in a fixture: its lines without those that mark problems. */
export const withoutCarets = (fixture: string): string =>
  fixture
    .split('\n')
    .filter((line) => !caretLine.test(line))
    .join('\n');

/** The cell with each problem marked under its line: carets below the text at fault, then code and message. */
export function withCarets(text: string, diagnostics: readonly Diagnostic[]): string {
  const index = new LineIndex(text);
  const lines = text.split('\n').map((line) => [line]);
  for (const { code, span, message } of diagnostics) {
    const from = index.at(span.start);
    const to = index.at(span.end);
    const width = to.line === from.line ? Math.max(1, to.column - from.column) : 1;
    lines[from.line - 1].push(`${' '.repeat(from.column - 1)}${'^'.repeat(width)} ${code}: ${message}`);
  }
  return lines.flat().join('\n');
}
