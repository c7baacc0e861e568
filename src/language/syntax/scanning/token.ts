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

/** Words that begin a definition in other languages; here they are ordinary names, and told of where one stands so. */
export const foreignWords = ['let', 'var', 'const', 'set', 'def'] as const;
