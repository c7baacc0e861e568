import type { Colors } from 'picocolors/types';
import type { PlacedDiagnostic } from '../core';
import type { Severity } from '../text';
import { wrap } from './wrap';

/** A problem with its place, the line it is about and what may be done, as a terminal shows it. */
export function findingText(
  found: PlacedDiagnostic,
  file: { readonly name: string; readonly lines: readonly string[] },
  { colours, width }: { readonly colours: Colors; readonly width: number },
): string {
  const paint: Record<Severity, (text: string) => string> = {
    error: colours.red,
    warning: colours.yellow,
    information: colours.cyan,
    hint: colours.cyan,
  };
  const place = `${file.name}:${found.line}:${found.column}`;
  const parts = [
    `${colours.bold(place)} ${paint[found.severity](found.severity)} ${colours.dim(found.code)}`,
    wrap(found.message, width, '  '),
    ...excerpt(found, file.lines, paint[found.severity]),
    ...(found.fixes ?? []).map(({ title }) => wrap(title, width, '       ', '  fix: ')),
  ];
  return parts.join('\n');
}

/** The line with carets under the stretch meant; a stretch of several lines is marked to the end of its first. */
function excerpt(found: PlacedDiagnostic, lines: readonly string[], paint: (text: string) => string): string[] {
  const source = lines[found.line - 1];
  if (source === undefined || source.length > longestShown) {
    return [];
  }
  const end = found.endLine === found.line ? found.endColumn : source.length + 1;
  const before = source.slice(0, found.column - 1).replace(/[^\t]/g, ' ');
  const number = String(found.line).padStart(5);
  const carets = '^'.repeat(Math.max(1, Math.min(end, source.length + 1) - found.column));
  return [`${number} | ${source}`, `${' '.repeat(number.length)} | ${before}${paint(carets)}`];
}

/** A longer line would fill the screen and show nothing. */
const longestShown = 400;
