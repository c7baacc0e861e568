import type { Span } from '../text';

/** One line: `start` to `end` is its text, `next` is where the next one begins. */
export interface Line extends Span {
  readonly next: number;
}

/** The lines of a text; `\n`, `\r\n` and a lone `\r` all end one, as in CommonMark. A last empty line is listed. */
export function linesOf(text: string, from = 0, to = text.length): Line[] {
  const lines: Line[] = [];
  let start = from;
  for (let i = from; i < to; i++) {
    const c = text.charCodeAt(i);
    if (c !== 10 && c !== 13) {
      continue;
    }
    const next = c === 13 && i + 1 < to && text.charCodeAt(i + 1) === 10 ? i + 2 : i + 1;
    lines.push({ start, end: i, next });
    start = next;
    i = next - 1;
  }
  lines.push({ start, end: to, next: to });
  return lines;
}

/** The same text with `\n` line ends. */
export const withNewlines = (text: string): string => text.replace(/\r\n?/g, '\n');

/** The line end most lines use; `\n` where there is none to follow. */
export function usualLineEnd(text: string): '\n' | '\r\n' {
  let pairs = 0;
  let newlines = 0;
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
    newlines++;
    pairs += text.charCodeAt(i - 1) === 13 ? 1 : 0;
  }
  return pairs * 2 > newlines ? '\r\n' : '\n';
}
