import type { Span } from '../../../text';
import type { Comment } from '../tree';
import { isLineBreak } from './characters';

/** Says to which statement each comment belongs: the one that it stands in or whose line it ends, or else the next one. */
export function placeComments(
  text: string,
  found: readonly Span[],
  statements: readonly number[],
  ends: Int32Array,
): Comment[] {
  let index = 0;
  return found.map((span) => {
    while (index < statements.length && isBelow(text, ends[statements[index]], span.start)) {
      index++;
    }
    return {
      span,
      text: text.slice(span.start + 2, span.end).trim(),
      statement: index < statements.length ? index : -1,
    };
  });
}

/** True when `at` lies after `end` and on another line. */
function isBelow(text: string, end: number, at: number): boolean {
  for (let offset = end; offset < at; offset++) {
    if (isLineBreak(text.charCodeAt(offset))) {
      return true;
    }
  }
  return false;
}
