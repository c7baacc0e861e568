/** What the scanner tells apart. `End` and `LineEnd` come first so that `token <= Token.LineEnd` means: nothing more here. */
export enum Token {
  End,
  LineEnd,
  Name,
  Number,
  Text,
  If,
  Then,
  Else,
  And,
  Or,
  Not,
  In,
  By,
  Where,
  Yes,
  No,
  /** `=` */
  Assign,
  Equal,
  NotEqual,
  Less,
  LessOrEqual,
  Greater,
  GreaterOrEqual,
  Plus,
  Minus,
  Times,
  Divide,
  Power,
  /** `²` or `³` after an operand. */
  Superscript,
  PlusMinus,
  OpenParenthesis,
  CloseParenthesis,
  OpenBracket,
  CloseBracket,
  Comma,
  Colon,
  Dot,
  /** `..` */
  Range,
  /** `|` of a table row. */
  Bar,
  /** `#` of a wire size. */
  Hash,
  /** A character that has no place here. */
  Unknown,
}

/** The reserved words: they cannot be names. */
export const reservedWords: ReadonlyMap<string, Token> = new Map([
  ['if', Token.If],
  ['then', Token.Then],
  ['else', Token.Else],
  ['and', Token.And],
  ['or', Token.Or],
  ['not', Token.Not],
  ['in', Token.In],
  ['by', Token.By],
  ['where', Token.Where],
  ['yes', Token.Yes],
  ['no', Token.No],
]);

/** Words that begin a statement where an operand follows; elsewhere they are ordinary names. */
export const statementWords = ['check', 'solve', 'input', 'use', 'allow'] as const;

/** Words with a meaning in one place only: `= schedule`, `from … to`, `over range`, `OL`. */
export const contextWords = ['schedule', 'from', 'to', 'over', 'range', 'OL'] as const;

const longestReserved = 5;

/** The token of the name at `start` … `end`: a reserved word's own, or `Name`. Compares in place, without a substring. */
export function wordToken(text: string, start: number, end: number): Token {
  const length = end - start;
  if (length < 2 || length > longestReserved) {
    return Token.Name;
  }
  switch (text.charCodeAt(start)) {
    case 97: // a
      return is(text, start, length, 'and') ? Token.And : Token.Name;
    case 98: // b
      return is(text, start, length, 'by') ? Token.By : Token.Name;
    case 101: // e
      return is(text, start, length, 'else') ? Token.Else : Token.Name;
    case 105: // i
      return is(text, start, length, 'in') ? Token.In : is(text, start, length, 'if') ? Token.If : Token.Name;
    case 110: // n
      return is(text, start, length, 'no') ? Token.No : is(text, start, length, 'not') ? Token.Not : Token.Name;
    case 111: // o
      return is(text, start, length, 'or') ? Token.Or : Token.Name;
    case 116: // t
      return is(text, start, length, 'then') ? Token.Then : Token.Name;
    case 119: // w
      return is(text, start, length, 'where') ? Token.Where : Token.Name;
    case 121: // y
      return is(text, start, length, 'yes') ? Token.Yes : Token.Name;
    default:
      return Token.Name;
  }
}

const is = (text: string, start: number, length: number, word: string): boolean =>
  length === word.length && text.startsWith(word, start);
