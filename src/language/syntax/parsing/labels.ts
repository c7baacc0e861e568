import { Token } from '../scanning/token';
import { Node } from '../tree';
import { isWordToken, readText } from './operands';
import { type Reader, replace } from './reader';

/** Links the text in quotes that ends a statement behind `before`, when there is one; it may stand on an indented line. */
export function readLabel(r: Reader, before: number, what: string): number {
  if (r.token === Token.LineEnd) {
    const at = r.lookBelow();
    if (at >= 0 && r.text.charAt(at) === '"' && r.indentBelow() > r.indent) {
      r.beginLine();
    }
  }
  if (r.token === Token.Text) {
    return r.tree.link(before, readText(r));
  }
  if (isWordToken(r.token) && !r.isLineBroken) {
    const from = r.start;
    const rest = r.skipTo();
    const end = r.lastEnd;
    r.report(
      'unquoted-text',
      from,
      end,
      `The ${what} stands in double quotes. Put quotation marks around it.`,
      replace('Put it in quotation marks', from, end, `"${r.text.slice(from, end).replaceAll('"', '')}"`, false),
    );
    return r.tree.link(before, rest);
  }
  return before;
}

/** The name that a statement word is about; an Error of no width when it is missing. */
export function readStatementName(r: Reader, word: string, example: string): number {
  return r.token === Token.Name ? r.take(Node.Name) : missingName(r, word, example);
}

/** Says that a name is missing behind a statement word, and stands in for it. */
export function missingName(r: Reader, word: string, example: string): number {
  if (!r.isLineBroken) {
    r.report(
      'missing-name',
      r.lastStart,
      r.lastEnd,
      `\`${word}\` is followed by a name, and none stands here. Write it as in \`${example}\`.`,
    );
  }
  return r.absent();
}
