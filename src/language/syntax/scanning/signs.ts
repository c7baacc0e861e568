import { Token } from './token';

/** Every sign of the language with its token; the ASCII spelling and the symbol of an operator are one token. */
const signs: readonly (readonly [string, Token])[] = [
  ['(', Token.OpenParenthesis],
  [')', Token.CloseParenthesis],
  ['[', Token.OpenBracket],
  [']', Token.CloseBracket],
  [',', Token.Comma],
  [':', Token.Colon],
  ['.', Token.Dot],
  ['..', Token.Range],
  ['|', Token.Bar],
  ['#', Token.Hash],
  ['+', Token.Plus],
  ['+-', Token.PlusMinus],
  ['±', Token.PlusMinus],
  ['-', Token.Minus],
  ['−', Token.Minus],
  ['*', Token.Times],
  ['×', Token.Times],
  ['·', Token.Times],
  ['⋅', Token.Times],
  ['/', Token.Divide],
  ['÷', Token.Divide],
  ['^', Token.Power],
  ['²', Token.Superscript],
  ['³', Token.Superscript],
  ['=', Token.Assign],
  ['==', Token.Equal],
  ['!=', Token.NotEqual],
  ['≠', Token.NotEqual],
  ['<', Token.Less],
  ['<=', Token.LessOrEqual],
  ['≤', Token.LessOrEqual],
  ['>', Token.Greater],
  ['>=', Token.GreaterOrEqual],
  ['≥', Token.GreaterOrEqual],
];

/** Tokens of one character by their code; those beyond ASCII are rare enough for a map. */
const singles = new Uint8Array(128).fill(Token.Unknown);
const wide = new Map<number, Token>();
/** Second characters that make a pair, and the pair's token, by the code of the first. */
const seconds = new Uint8Array(128);
const pairs = new Uint8Array(128);

for (const [sign, token] of signs) {
  const first = sign.charCodeAt(0);
  if (sign.length === 2) {
    seconds[first] = sign.charCodeAt(1);
    pairs[first] = token;
  } else if (first < 128) {
    singles[first] = token;
  } else {
    wide.set(first, token);
  }
}

/** The token of a sign of one character; `Unknown` when there is none. */
export const signToken = (code: number): Token => (code < 128 ? singles[code] : (wide.get(code) ?? Token.Unknown));

/** The token of the sign that two codes make; `End`, which is 0, when they make none. */
export const pairToken = (first: number, second: number): Token =>
  first < 128 && seconds[first] === second ? pairs[first] : Token.End;
