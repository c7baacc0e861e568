import type { Codes } from '../../../text';
import { isLineBreak, isNameStart, nameEnd, skipBlanks } from './characters';
import { pairToken, signToken } from './signs';
import { Token } from './token';
import { statementWordOf, tokenOfWord, wordAt } from './words';

/** True when a single `=` stands at `at`. */
export const isAssign = (codes: Codes, at: number): boolean => codes[at] === 61 && codes[at + 1] !== 61;

/** True when the parenthesis at `at` holds the parameters of a definition: `f(a, b) = …`. */
export function holdsParameters(codes: Codes, at: number): boolean {
  let depth = 0;
  for (let offset = at; ; offset++) {
    const c = codes[offset];
    // A nought is the text's end, or stands where no parameter does.
    if (c === 0 || isLineBreak(c) || c === 34 || (c === 47 && codes[offset + 1] === 47)) {
      return false;
    }
    depth += c === 40 ? 1 : c === 41 ? -1 : 0;
    if (depth === 0) {
      return isAssign(codes, skipBlanks(codes, offset + 1));
    }
  }
}

/** True when the line whose first token is at `at` reads like a new statement, or inside a block like a field or a row. */
export function beginsStatement(codes: Codes, at: number, inBlock: boolean): boolean {
  const end = nameEnd(codes, at);
  if (end === at) {
    return inBlock && codes[at] === 124;
  }
  const next = skipBlanks(codes, end);
  const c = codes[next];
  if (isAssign(codes, next) || (inBlock && c === 58)) {
    return true;
  }
  if (c === 40) {
    return holdsParameters(codes, next);
  }
  return next > end && c !== 0 && !isLineBreak(c) && statementWordOf(wordAt(codes, at, end)) !== undefined;
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
export function beginsWithOperator(codes: Codes, at: number): boolean {
  const c = codes[at];
  if (isNameStart(c)) {
    const end = nameEnd(codes, at);
    return leadingWords.has(tokenOfWord(wordAt(codes, at, end))) && codes[skipBlanks(codes, end)] !== 58;
  }
  const token = pairToken(c, codes[at + 1]) || signToken(c);
  return (token >= Token.Assign && token <= Token.PlusMinus) || (token === Token.Dot && isNameStart(codes[at + 1]));
}
