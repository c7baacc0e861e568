import { isBlank, isDigit, isLineBreak, isNamePart, isNameStart, lineEnd, nameEnd, skipBlanks } from './characters';
import { type NumberText, readNumber } from './number-text';
import { statementWords, Token, wordToken } from './token';
import type { Comment } from './tree';

/**
 * Reads one token at a time, on demand: what stands after a number or in a table cell is read by other rules than
 * the rest, and only the parser knows where it is. A line ends in a `LineEnd` token, which stays until the parser
 * goes on to the next line; inside brackets lines run on by themselves.
 */
export class Scanner {
  token = Token.LineEnd;
  start = 0;
  end = 0;
  /** The token before this one. */
  lastStart = 0;
  lastEnd = 0;
  /** Brackets open here; line breaks inside them are white space. */
  depth = 0;
  /** Indentation of the line that was begun last. */
  lineIndent = 0;
  /** Indentation of the line that the current statement or field began on. */
  indent = 0;
  /** True inside a block, where `name:` begins a field. */
  inBlock = false;
  /** True in a table row, which never runs on. */
  inRow = false;
  /** The number last read. */
  readonly number: NumberText = { end: 0, value: 0, decimals: 0 };
  readonly comments: { start: number; end: number }[] = [];
  /** Answer of the last look below, so that looking again costs nothing. */
  private lookedFrom = -1;
  private below = -1;
  private belowIndent = 0;

  constructor(readonly text: string) {}

  /** True when the current token is this one. */
  at(token: Token): boolean {
    return this.token === token;
  }

  /** Goes on to the next token. */
  advance(): void {
    this.lastStart = this.start;
    this.resume(this.end);
  }

  /** Goes on after `end`, up to where the parser has read by rules of its own. */
  resume(end: number): void {
    this.lastEnd = end;
    this.scan(end);
  }

  /** At a line's end: goes on to the next line that holds something. False at the end of the text. */
  beginLine(): boolean {
    const at = this.lookBelow();
    this.lineIndent = this.belowIndent;
    if (at < 0) {
      this.token = Token.End;
      this.start = this.end = this.text.length;
      return false;
    }
    this.scan(at);
    return true;
  }

  /** Indentation of the next line that holds something, or -1 when there is none. */
  indentBelow(): number {
    return this.lookBelow() < 0 ? -1 : this.belowIndent;
  }

  /** Offset of the first token of the next line that holds something, or -1. */
  lookBelow(): number {
    if (this.lookedFrom !== this.start) {
      this.lookedFrom = this.start;
      this.below = this.findBelow(this.start);
    }
    return this.below;
  }

  /** At a line's end after an operator or another word that wants more: goes on below unless a new statement stands there. */
  runOn(): void {
    if (this.token === Token.LineEnd && !this.inRow) {
      const at = this.lookBelow();
      if (at >= 0 && (this.belowIndent > this.indent || !this.beginsStatement(at))) {
        this.scan(at);
      }
    }
  }

  /** At a line's end: goes on below when an indented line there begins with a binary operator. */
  runOnToOperator(): boolean {
    if (this.inRow) {
      return false;
    }
    const at = this.lookBelow();
    if (at < 0 || this.belowIndent <= this.indent || !this.beginsWithOperator(at)) {
      return false;
    }
    this.scan(at);
    return true;
  }

  /** The offset of the next character on this line after the current token that is no white space. */
  afterToken(): number {
    return skipBlanks(this.text, this.end);
  }

  /** True when a single `=` stands at `at`. */
  isAssign(at: number): boolean {
    return this.text.charCodeAt(at) === 61 && this.text.charCodeAt(at + 1) !== 61;
  }

  /** True when the name at `start` … `end` is `word`. */
  isWord(word: string): boolean {
    return this.token === Token.Name && this.end - this.start === word.length && this.text.startsWith(word, this.start);
  }

  private scan(from: number): void {
    const { text } = this;
    let at = from;
    for (;;) {
      const c = text.charCodeAt(at);
      if (c === 32 || isBlank(c)) {
        at++;
      } else if (c === 47 && text.charCodeAt(at + 1) === 47) {
        at = this.comment(at);
      } else if (isLineBreak(c)) {
        this.token = Token.LineEnd;
        this.start = this.end = at;
        if (this.depth === 0 || this.inRow) {
          return;
        }
        const next = this.lookBelow();
        if (next < 0 || (this.belowIndent <= this.indent && this.beginsStatement(next))) {
          return;
        }
        at = next;
      } else {
        break;
      }
    }
    this.start = at;
    if (at >= text.length) {
      this.token = Token.End;
      this.end = text.length;
      return;
    }
    this.readToken(at, text.charCodeAt(at));
  }

  private readToken(at: number, c: number): void {
    const { text } = this;
    if (isNameStart(c)) {
      this.end = nameEnd(text, at);
      this.token = wordToken(text, at, this.end);
      return;
    }
    if (isDigit(c) || (c === 46 && isDigit(text.charCodeAt(at + 1)))) {
      readNumber(text, at, this.number);
      this.end = this.number.end;
      this.token = Token.Number;
      return;
    }
    const next = text.charCodeAt(at + 1);
    switch (c) {
      case 34: // "
      case 0x201c:
      case 0x201d:
      case 0x201e:
        this.readText(at);
        return;
      case 40:
        return this.sign(Token.OpenParenthesis, 1);
      case 41:
        return this.sign(Token.CloseParenthesis, 1);
      case 91:
        return this.sign(Token.OpenBracket, 1);
      case 93:
        return this.sign(Token.CloseBracket, 1);
      case 44:
        return this.sign(Token.Comma, 1);
      case 58:
        return this.sign(Token.Colon, 1);
      case 46:
        return next === 46 ? this.sign(Token.Range, 2) : this.sign(Token.Dot, 1);
      case 43:
        return next === 45 ? this.sign(Token.PlusMinus, 2) : this.sign(Token.Plus, 1);
      case 0xb1:
        return this.sign(Token.PlusMinus, 1);
      case 45:
      case 0x2212:
        return this.sign(Token.Minus, 1);
      case 42:
      case 0xd7:
      case 0xb7:
      case 0x22c5:
        return this.sign(Token.Times, 1);
      case 47:
      case 0xf7:
        return this.sign(Token.Divide, 1);
      case 94:
        return this.sign(Token.Power, 1);
      case 0xb2:
      case 0xb3:
        return this.sign(Token.Superscript, 1);
      case 61:
        return next === 61 ? this.sign(Token.Equal, 2) : this.sign(Token.Assign, 1);
      case 33:
        return next === 61 ? this.sign(Token.NotEqual, 2) : this.sign(Token.Unknown, 1);
      case 0x2260:
        return this.sign(Token.NotEqual, 1);
      case 60:
        return next === 61 ? this.sign(Token.LessOrEqual, 2) : this.sign(Token.Less, 1);
      case 0x2264:
        return this.sign(Token.LessOrEqual, 1);
      case 62:
        return next === 61 ? this.sign(Token.GreaterOrEqual, 2) : this.sign(Token.Greater, 1);
      case 0x2265:
        return this.sign(Token.GreaterOrEqual, 1);
      case 124:
        return this.sign(Token.Bar, 1);
      case 35:
        return this.sign(Token.Hash, 1);
      default:
        // A pair of surrogates is one character.
        return this.sign(Token.Unknown, c >= 0xd800 && c < 0xdc00 && next >= 0xdc00 && next < 0xe000 ? 2 : 1);
    }
  }

  private sign(token: Token, length: number): void {
    this.token = token;
    this.end = this.start + length;
  }

  /** A text ends at its closing quotation mark or with the line. */
  private readText(at: number): void {
    const { text } = this;
    const plain = text.charCodeAt(at) === 34;
    let end = at + 1;
    for (; end < text.length; end++) {
      const c = text.charCodeAt(end);
      if (isLineBreak(c)) {
        break;
      }
      if (c === 34 || (!plain && (c === 0x201c || c === 0x201d))) {
        end++;
        break;
      }
    }
    this.token = Token.Text;
    this.end = end;
  }

  /** Notes the comment at `at`, once however often it is passed, and returns its end. */
  private comment(at: number): number {
    const end = lineEnd(this.text, at);
    const last = this.comments.at(-1);
    if (!last || last.start < at) {
      this.comments.push({ start: at, end });
    }
    return end;
  }

  private findBelow(from: number): number {
    const { text } = this;
    let indent = 0;
    for (let at = from; at < text.length; ) {
      const c = text.charCodeAt(at);
      if (isLineBreak(c)) {
        indent = 0;
        at++;
      } else if (c === 9) {
        indent += 4 - (indent % 4);
        at++;
      } else if (isBlank(c)) {
        indent++;
        at++;
      } else if (c === 47 && text.charCodeAt(at + 1) === 47) {
        at = this.comment(at);
      } else {
        this.belowIndent = indent;
        return at;
      }
    }
    return -1;
  }

  /** True when the line whose first token is at `at` reads like a new statement, so that what is open above must be a mistake. */
  private beginsStatement(at: number): boolean {
    const { text } = this;
    const end = nameEnd(text, at);
    if (end === at) {
      return this.inBlock && text.charCodeAt(at) === 124;
    }
    const next = skipBlanks(text, end);
    if (this.isAssign(next) || (this.inBlock && text.charCodeAt(next) === 58)) {
      return true;
    }
    if (text.charCodeAt(next) === 40) {
      return this.isAssign(skipBlanks(text, closingParenthesis(text, next)));
    }
    return next > end && next < text.length && statementWords.some((word) => word === text.slice(at, end));
  }

  private beginsWithOperator(at: number): boolean {
    const { text } = this;
    const c = text.charCodeAt(at);
    if (isNameStart(c)) {
      const end = nameEnd(text, at);
      const token = wordToken(text, at, end);
      const named = text.charCodeAt(skipBlanks(text, end)) === 58;
      return token !== Token.Name && !named && leadingWords.has(token);
    }
    return (
      (c === 47 && text.charCodeAt(at + 1) !== 47) ||
      (c === 46 && isNamePart(text.charCodeAt(at + 1)) && !isDigit(text.charCodeAt(at + 1))) ||
      leadingSigns.includes(text[at])
    );
  }
}

/** What a line may begin with to go on with the line above it. */
const leadingWords = new Set([Token.Then, Token.Else, Token.And, Token.Or, Token.In, Token.By, Token.Where]);
const leadingSigns = '+-−*×·⋅÷^±=<>≤≥≠!';

/** The offset after the parenthesis that closes the one at `at`, on the same line; the line's end when none does. */
function closingParenthesis(text: string, at: number): number {
  let depth = 0;
  for (let offset = at; offset < text.length; offset++) {
    const c = text.charCodeAt(offset);
    if (isLineBreak(c)) {
      return offset;
    }
    if (c === 40) {
      depth++;
    } else if (c === 41 && --depth === 0) {
      return offset + 1;
    }
  }
  return text.length;
}

/** Says to which statement each comment belongs: the one whose line it ends, or the next one. */
export function placeComments(
  text: string,
  found: readonly { start: number; end: number }[],
  statements: readonly { readonly start: number; readonly end: number }[],
): Comment[] {
  let index = 0;
  return found.map(({ start, end }) => {
    while (
      index < statements.length &&
      statements[index].end <= start &&
      breaksBetween(text, statements[index].end, start)
    ) {
      index++;
    }
    return {
      span: { start, end },
      text: text.slice(start + 2, end).trim(),
      statement: index < statements.length ? index : -1,
    };
  });
}

function breaksBetween(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    if (isLineBreak(text.charCodeAt(at))) {
      return true;
    }
  }
  return false;
}
