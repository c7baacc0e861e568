import { isMap, isScalar, type Scalar } from 'yaml';
import type { Diagnostic, Severity, Span } from '../text';

export const severityWords = ['error', 'warning', 'information', 'hint', 'off'] as const;

/** One line below `severities:` in the front matter: how much a lint's findings weigh in this sheet. */
export interface SeverityLine {
  readonly id: string;
  readonly idSpan: Span;
  readonly severity: Severity | 'off';
}

/** Reads the value of `severities:`; `from` is where the YAML begins in the cell's text. */
export function readSeverities(
  value: unknown,
  from: number,
): { readonly lines: readonly SeverityLine[]; readonly diagnostics: readonly Diagnostic[] } {
  const lines: SeverityLine[] = [];
  const diagnostics: Diagnostic[] = [];
  const spanOf = (node: unknown): Span => {
    const [start, end] = (node as Scalar | undefined)?.range ?? [0, 0];
    return { start: from + start, end: from + end };
  };
  const report = (span: Span, message: string) =>
    diagnostics.push({ code: 'front-matter-value', severity: 'error', span, message });
  if (!isMap(value)) {
    report(
      spanOf(value),
      '`severities` holds one line a warning below it, such as `voltage-drop: information`, indented.',
    );
    return { lines, diagnostics };
  }
  for (const pair of value.items) {
    const id = isScalar(pair.key) ? String(pair.key.value) : '';
    const word = isScalar(pair.value) ? String(pair.value.source ?? pair.value.value) : '';
    if (severityWords.includes(word as 'off')) {
      lines.push({ id, idSpan: spanOf(pair.key), severity: word as Severity | 'off' });
    } else {
      const place = isScalar(pair.value) && word !== '' ? pair.value : pair.key;
      report(spanOf(place), `\`${id}\` weighs ${severityWords.slice(0, -1).join(', ')} or off; this is \`${word}\`.`);
    }
  }
  return { lines, diagnostics };
}
