import { isLineBreak, isNameStart, nameEnd, skipBlanks } from './characters';
import { signToken } from './signs';
import { statementWords, Token, wordToken } from './token';

/** True when a single `=` stands at `at`. */
export const isAssign = (text: string, at: number): boolean =>
  text.charCodeAt(at) === 61 && text.charCodeAt(at + 1) !== 61;

/** True when the parenthesis at `at` holds the parameters of a definition: `f(a, b) = …`. */
export function holdsParameters(text: string, at: number): boolean {
  let depth = 0;
  for (let offset = at; offset < text.length; offset++) {
    const c = text.charCodeAt(offset);
    if (isLineBreak(c) || c === 34 || (c === 47 && text.charCodeAt(offset + 1) === 47)) {
      return false;
    }
    depth += c === 40 ? 1 : c === 41 ? -1 : 0;
    if (depth === 0) {
      return isAssign(text, skipBlanks(text, offset + 1));
    }
  }
  return false;
}

/** True when the line whose first token is at `at` reads like a new statement, or inside a block like a field or a row. */
export function beginsStatement(text: string, at: number, inBlock: boolean): boolean {
  const end = nameEnd(text, at);
  if (end === at) {
    return inBlock && text.charCodeAt(at) === 124;
  }
  const next = skipBlanks(text, end);
  if (isAssign(text, next) || (inBlock && text.charCodeAt(next) === 58)) {
    return true;
  }
  if (text.charCodeAt(next) === 40) {
    return holdsParameters(text, next);
  }
  return (
    next > end &&
    next < text.length &&
    !isLineBreak(text.charCodeAt(next)) &&
    statementWords.some((word) => word === text.slice(at, end))
  );
}

const leadingWords: ReadonlySet<Token> = new Set([
  Token.Then,
  Token.Else,
  Token.And,
  Token.Or,
  Token.In,
  Token.By,
  Token.Where,
]);

/** True when the token at `at` goes on with the line above: a binary operator, or the dot of a member. */
export function beginsWithOperator(text: string, at: number): boolean {
  const c = text.charCodeAt(at);
  if (isNameStart(c)) {
    const end = nameEnd(text, at);
    return leadingWords.has(wordToken(text, at, end)) && text.charCodeAt(skipBlanks(text, end)) !== 58;
  }
  const token = signToken(c, text.charCodeAt(at + 1));
  return (
    (token >= Token.Assign && token <= Token.PlusMinus) || (token === Token.Dot && isNameStart(text.charCodeAt(at + 1)))
  );
}
