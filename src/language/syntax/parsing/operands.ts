import { isDigit, isNameStart, isQuote, nameEnd } from '../scanning/characters';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readBrackets } from './brackets';
import { reportHabit } from './habits';
import { readHash, readNumberOrSize } from './quantities';
import { type Reader, replace } from './reader';
import { readTurnedSize } from './sizes';

/** Reads what operators stand between, where it is neither a number, a name nor in parentheses. */
export function readOperand(r: Reader): number {
  switch (r.token) {
    case Token.Hash:
      return readHash(r);
    case Token.Text:
      return readText(r);
    case Token.Yes:
      return r.take(Node.Yes);
    case Token.No:
      return r.take(Node.No);
    case Token.OpenBracket:
      return readBrackets(r, Node.List, r.start);
    default:
      return missing(r);
  }
}

/** A name, a call, or what begins with a word that means more. */
export function readName(r: Reader): number {
  const { start } = r;
  if (r.word >= 0) {
    if (r.isWord('OL')) {
      r.advance();
      return readOverRange(r, start);
    }
    if (r.isWord('over') && followsWord(r, 'range')) {
      r.advance();
      r.advance();
      return readOverRange(r, start);
    }
  }
  if (mayBeNumbered(r.codes[r.afterToken()]) && r.vocabulary.alwaysSizeUnits.has(r.currentText)) {
    const turned = readTurnedSize(r, start);
    if (turned >= 0) {
      return turned;
    }
  }
  if (r.codes[r.end] === 45) {
    joinHyphens(r);
  }
  const name = r.take(Node.Name);
  if (r.token !== Token.OpenParenthesis) {
    return name;
  }
  return readBrackets(r, Node.Call, start, name);
}

/** True where a size written the wrong way round may go on: `AWG 12`, `AWG #12`, `AWG No. 12`. Operators are no such places. */
const mayBeNumbered = (c: number): boolean => isDigit(c) || c === 35 || c === 78;

function followsWord(r: Reader, word: string): boolean {
  const at = r.afterToken();
  return nameEnd(r.codes, at) === at + word.length && r.text.startsWith(word, at);
}

/** A word of the vocabulary with a hyphen in it (`XHHW-2`) is one name, not a subtraction. */
function joinHyphens(r: Reader): void {
  const { text, codes, vocabulary } = r;
  let end = r.end;
  while (codes[end] === 45) {
    let next = end + 1;
    while (isWordPart(codes[next])) {
      next++;
    }
    if (next === end + 1) {
      return;
    }
    const word = text.slice(r.start, next);
    if (vocabulary.hyphenatedWords.has(word) || vocabulary.designationWords.has(word)) {
      r.endName(next);
    }
    end = next;
  }
}

const isWordPart = (c: number): boolean => isNameStart(c) || (c >= 48 && c <= 57);

/** What follows `over range` or `OL`: the end of the range, where it is given. */
function readOverRange(r: Reader, start: number): number {
  const end = r.lastEnd;
  if (r.token !== Token.Number) {
    return r.tree.leaf(Node.OverRange, start, end);
  }
  const limit = readNumberOrSize(r);
  return r.tree.parent(Node.OverRange, start, r.tree.ends[limit], limit);
}

/** A text in double quotes; also tells when they are not closed or not plain. */
export function readText(r: Reader): number {
  const { text, start, end } = r;
  const closed = end - start > 1 && isQuote(text.charCodeAt(end - 1));
  if (!closed) {
    r.report(
      'unclosed-text',
      start,
      end,
      'This text has no closing quotation mark. Put `"` where it ends, on the same line.',
      [{ title: 'Close the text', edits: [{ span: { start: end, end }, newText: '"' }], safe: false }],
    );
  } else if (text.charCodeAt(start) !== 34 || text.charCodeAt(end - 1) !== 34) {
    r.report(
      'curly-quotes',
      start,
      end,
      'This text stands in typographic quotation marks. Texts stand in plain ones: `"…"`.',
      [
        {
          title: 'Use plain quotation marks',
          edits: [
            { span: { start, end: start + 1 }, newText: '"' },
            { span: { start: end - 1, end }, newText: '"' },
          ],
          safe: true,
        },
      ],
    );
  }
  return r.take(Node.Text);
}

/** `record.field`, of which the record is read. */
export function readMember(r: Reader, record: number): number {
  const { tree, start, end } = r;
  if (tree.kinds[record] === Node.Number) {
    r.report(
      'point-without-digit',
      tree.starts[record],
      end,
      'A decimal point has a digit on both sides. Take the point out, or write `.0`.',
      replace('Take the point out', start, end, ''),
    );
    r.advance();
    return record;
  }
  r.advance();
  if (!isWordToken(r.token)) {
    r.report(
      'missing-field',
      start,
      end,
      'A dot takes one field out of a record, and no field name follows. Write its name behind the dot.',
    );
    return record;
  }
  tree.link(record, r.take(Node.Name));
  return tree.parent(Node.Member, tree.starts[record], r.lastEnd, record);
}

/** True for a name or a reserved word, which may name a field or an argument. */
export const isWordToken = (token: Token): boolean => token === Token.Name || (token >= Token.If && token <= Token.No);

/** Says that a value was expected here. A character that means nothing is passed, so that reading goes on. */
function missing(r: Reader): number {
  const { start, end, token } = r;
  if (token === Token.Unknown && reportHabit(r, start, start + 20)) {
    const from = start;
    r.resume(end);
    return r.tree.leaf(Node.Error, from, end);
  }
  if (token === Token.Unknown) {
    r.report(
      'unexpected-character',
      start,
      end,
      `The character \`${r.currentText}\` has no meaning here. Take it out, or put text in double quotes.`,
    );
    return r.take(Node.Error);
  }
  if (!r.isLineBroken) {
    if (r.isOver) {
      r.report(
        'missing-expression',
        r.lastStart,
        r.lastEnd,
        `Nothing follows \`${r.text.slice(r.lastStart, r.lastEnd)}\`, and a value is needed. Write a number with its unit, a name or a formula.`,
      );
    } else {
      r.report(
        'missing-expression',
        start,
        end,
        `Found \`${r.currentText}\` where a value was expected. Write a number with its unit, a name or a formula before it.`,
      );
    }
  }
  return r.absent();
}
