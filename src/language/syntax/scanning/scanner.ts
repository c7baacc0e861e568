import { type Codes, hashFactor } from '../../../text';
import {
  ascii,
  Character,
  characterOf,
  isDigit,
  isLineBreak,
  isNamePart,
  isQuote,
  lineEnd,
  skipBlanks,
} from './characters';
import { beginsStatement, beginsWithOperator } from './line-starts';
import { type NumberText, readNumber } from './number-text';
import { pairToken, signToken } from './signs';
import { Token } from './token';
import { type ContextWord, isTheWord, tokenOfWord, wordAt } from './words';

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
  readonly number: NumberText = { value: Number.NaN, decimals: 0 };
  /** Of the name last read: its hash, and which word of the language it is, -1 for none. */
  hash = 0;
  word = -1;
  readonly comments: { start: number; end: number }[] = [];
  /** Answer of the last look below, so that looking again costs nothing. */
  private lookedFrom = -1;
  private below = -1;
  private belowIndent = 0;

  constructor(
    readonly text: string,
    /** The codes of the text. */
    readonly codes: Codes,
  ) {}

  /** True when the current token is this one. */
  at(token: Token): boolean {
    return this.token === token;
  }

  /** Goes on to the next token; at the line's end there is none. */
  advance(): void {
    if (this.token <= Token.LineEnd) {
      return;
    }
    this.lastStart = this.start;
    this.lastEnd = this.end;
    this.scan(this.end);
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
    this.lastStart = this.lastEnd = at;
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
      if (at >= 0 && (this.belowIndent > this.indent || !beginsStatement(this.codes, at, this.inBlock))) {
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
    if (at < 0 || this.belowIndent <= this.indent || !beginsWithOperator(this.codes, at)) {
      return false;
    }
    this.scan(at);
    return true;
  }

  /** The offset of the next character on this line after the current token that is no white space. */
  afterToken(): number {
    return skipBlanks(this.codes, this.end);
  }

  /** True when the current token is a name, and this word. */
  isWord(word: ContextWord): boolean {
    return this.token === Token.Name && isTheWord(this.word, word);
  }

  /** Has the current name end later than names do, at a hyphen's word. */
  endName(end: number): void {
    for (let at = this.end; at < end; at++) {
      this.hash = Math.imul(this.hash ^ this.codes[at], hashFactor);
    }
    this.end = end;
  }

  /** Reads the token at `from` or behind it. In one piece, because it is too long then to be compiled into each caller. */
  private scan(from: number): void {
    const { codes } = this;
    for (let at = from; ; ) {
      const c = codes[at];
      switch (c < 128 ? ascii[c] : characterOf(c)) {
        case Character.Blank:
          at++;
          break;
        case Character.Letter: {
          let hash = 0;
          let end = at;
          let code = c;
          do {
            hash = Math.imul(hash ^ code, hashFactor);
            code = codes[++end];
          } while (code < 128 ? ascii[code] >= Character.Subscript : isNamePart(code));
          const word = wordAt(codes, at, end, hash);
          this.token = word < 0 ? Token.Name : tokenOfWord(word);
          this.word = word;
          this.hash = hash;
          this.start = at;
          this.end = end;
          return;
        }
        case Character.Digit:
          this.token = Token.Number;
          this.start = at;
          this.end = readNumber(this.text, codes, at, this.number);
          return;
        case Character.LineBreak:
          this.token = Token.LineEnd;
          this.start = this.end = at;
          if (this.depth === 0 || this.inRow) {
            return;
          }
          at = this.lookBelow();
          if (at < 0 || (this.belowIndent <= this.indent && beginsStatement(codes, at, this.inBlock))) {
            return;
          }
          break;
        case Character.Quote:
          this.token = Token.Text;
          this.start = at;
          this.end = textEnd(this.text, at);
          return;
        default: {
          const next = codes[at + 1];
          if (c === 47 && next === 47) {
            at = this.comment(at);
            break;
          }
          this.start = at;
          if (c === 46 && isDigit(next)) {
            this.token = Token.Number;
            this.end = readNumber(this.text, codes, at, this.number);
            return;
          }
          const pair = pairToken(c, next);
          if (pair > 0) {
            this.token = pair;
            this.end = at + 2;
          } else if (c === 0 && at >= this.text.length) {
            this.token = Token.End;
            this.end = at;
          } else {
            this.token = signToken(c);
            this.end = at + (isSurrogatePair(c, next) ? 2 : 1);
          }
          return;
        }
      }
    }
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
    const { codes } = this;
    let indent = 0;
    for (let at = from; ; ) {
      const c = codes[at];
      switch (c < 128 ? ascii[c] : characterOf(c)) {
        case Character.LineBreak:
          indent = 0;
          at++;
          break;
        case Character.Blank:
          indent += c === 9 ? 4 - (indent % 4) : 1;
          at++;
          break;
        default:
          if (c === 47 && codes[at + 1] === 47) {
            at = this.comment(at);
            break;
          }
          if (c === 0 && at >= this.text.length) {
            return -1;
          }
          this.belowIndent = indent;
          return at;
      }
    }
  }
}

/** A character beyond the basic plane is two codes and one character. */
const isSurrogatePair = (first: number, second: number): boolean =>
  first >= 0xd800 && first < 0xdc00 && second >= 0xdc00 && second < 0xe000;

/** A text ends at its closing quotation mark or with the line. */
function textEnd(text: string, at: number): number {
  const isPlain = text.charCodeAt(at) === 34;
  for (let end = at + 1; end < text.length; end++) {
    const c = text.charCodeAt(end);
    if (isLineBreak(c)) {
      return end;
    }
    if (c === 34 || (!isPlain && isQuote(c))) {
      return end + 1;
    }
  }
  return text.length;
}
