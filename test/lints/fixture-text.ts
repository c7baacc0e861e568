import { type Diagnostic, LineIndex } from '../../src/text';

export interface Case {
  /** What the case is about. */
  readonly title: string;
  readonly fires: boolean;
  /** The cell's text, without its carets. */
  readonly source: string;
  /** The cell's text with its carets, as the fixture holds it. */
  readonly written: string;
}

const caretLine = /^ *\^+ [a-z]/;

/** Cases begin with `## fires: …` or `## silent: …`; under a line, carets mark what a finding is about. */
export function readCases(fixture: string): Case[] {
  return fixture
    .split(/^## /m)
    .slice(1)
    .map((part) => {
      const [head, ...lines] = part.trimEnd().split('\n');
      const [, kind, title] = /^(fires|silent): (.*)$/.exec(head)!;
      const source = lines.filter((line) => !caretLine.test(line));
      return { title, fires: kind === 'fires', source: `${source.join('\n')}\n`, written: `${lines.join('\n')}\n` };
    });
}

/** The cell's text with a line of carets, id, severity and message below each line that a finding begins on. */
export function withCarets(source: string, findings: readonly Diagnostic[]): string {
  const lines = new LineIndex(source);
  return source
    .split('\n')
    .flatMap((text, i) => [
      text,
      ...findings
        .filter(({ span }) => lines.at(span.start).line === i + 1)
        .map(({ span, code, severity, message }) => {
          const { column } = lines.at(span.start);
          const end = lines.at(span.end);
          const width = (end.line === i + 1 ? end.column : text.length + 1) - column;
          return `${' '.repeat(column - 1)}${'^'.repeat(width)} ${code} (${severity}): ${message}`;
        }),
    ])
    .join('\n');
}
