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
    ...excerpt(found, file.lines, paint[found.severity], width),
    ...(found.fixes ?? []).map(({ title }) => wrap(title, width, '       ', '  fix: ')),
  ];
  return parts.join('\n');
}

/**
 * The line with carets under the stretch meant; a stretch of several lines is marked to the end of its first. A line
 * wider than the screen is shown around the place.
 */
function excerpt(
  found: PlacedDiagnostic,
  lines: readonly string[],
  paint: (text: string) => string,
  width: number,
): string[] {
  const source = lines[found.line - 1];
  if (source === undefined) {
    return [];
  }
  const start = found.column - 1;
  const end = found.endLine === found.line ? found.endColumn - 1 : source.length;
  const room = Math.max(40, width - gutter);
  const from = source.length <= room ? 0 : Math.max(0, Math.min(start - room / 4, source.length - room)) | 0;
  const shown = source.slice(from, from + room);
  const before = shown.slice(0, start - from).replace(/[^\t]/g, ' ');
  const carets = '^'.repeat(Math.max(1, Math.min(end - from, shown.length) - (start - from)));
  return [`${String(found.line).padStart(5)} | ${printable(shown)}`, `${' '.repeat(5)} | ${before}${paint(carets)}`];
}

/** Columns that the line's number takes. */
const gutter = 8;

/** Text of a file as it may go to a terminal: what could steer it becomes a mark, one for one so that carets fit. */
const printable = (text: string): string => text.replace(/(?!\t)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '·');
