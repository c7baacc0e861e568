/** Quotations and lists within one another on one line, of which nobody writes so many. */
const deepest = 100;

/** Marks of one paragraph that may pair up with one another. */
const mostMarks = 4000;

const nesting = `(?:[ \\t]*(?:>|[-+*][ \\t]|\\d{1,9}[.)][ \\t])){${deepest}}`;
const nested = new RegExp(`^${nesting}`, 'm');
const tooDeep = new RegExp(`^(${nesting})(.+)$`, 'gm');

/**
 * True for a text so full of Markdown's marks that it is no writing: reading what pairs up in it would take the square of
 * its length, and what lies in what be deeper than a program can follow.
 */
export const isTangled = (text: string, marks = pairing): boolean =>
  nested.test(text) ||
  (text.length > mostMarks && text.split(/\n[ \t]*\n/).some((paragraph) => isFullOf(marks, paragraph)));

/** The marks that may pair up with one another. */
const pairing: ReadonlySet<string> = new Set('*_~[]`');

/** Those among them that decide where a code span stands. */
export const brackets: ReadonlySet<string> = new Set('[]');

/**
 * A text of the same length with letters in place of what lies in a hundred quotations and lists. Where its outermost
 * blocks begin and end is the same: none begins or ends so deep.
 */
export const withoutDepths = (text: string): string =>
  text.replace(tooDeep, (_, marks: string, rest: string) => marks + 'x'.repeat(rest.length));

function isFullOf(wanted: ReadonlySet<string>, paragraph: string): boolean {
  let marks = 0;
  for (const line of paragraph.split('\n')) {
    // In a table nothing pairs up from one cell to another.
    const end = /^\s*\|/.test(line) ? 0 : line.length;
    for (let at = 0; at < end; at++) {
      marks += wanted.has(line[at]) ? 1 : 0;
    }
    if (marks > mostMarks) {
      return true;
    }
  }
  return false;
}
