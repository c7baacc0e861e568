import type { SyntaxTree } from '../../language';
import written from './snippets.json';

/** A statement to fill in. */
export interface Snippet {
  /** The word that it is offered under. */
  readonly prefix: string;
  readonly description: string;
  /** Its lines; `${1:text}` is a place to type over, `${1|a,b|}` one with a choice, as editors agreed to write them. */
  readonly body: readonly string[];
}

export const snippets: readonly Snippet[] = written;

const firstWord = /^[ \t]*[\p{L}\p{N}_]*$/u;

/**
 * True where a statement of its own can begin: at the margin of the cell, with nothing but a word before the cursor, and
 * not in the middle of a statement that runs on over several lines.
 */
export function canBeginStatement({ text, statements, starts, ends }: SyntaxTree, offset: number): boolean {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  if (!firstWord.test(text.slice(lineStart, offset))) {
    return false;
  }
  const margin = indentAt(text, text.search(/\S/));
  return (
    indentAt(text, lineStart) <= margin &&
    !statements.some((statement) => starts[statement] < lineStart && ends[statement] > lineStart)
  );
}

/** How far the line with an offset is indented. */
function indentAt(text: string, offset: number): number {
  const lineStart = text.lastIndexOf('\n', Math.max(0, offset) - 1) + 1;
  return /^[ \t]*/.exec(text.slice(lineStart, lineStart + 1000))![0].length;
}
