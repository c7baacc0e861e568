import { skipBlanks } from '../scanning/characters';
import { isAssign } from '../scanning/line-starts';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readExpression } from './expressions';
import { isWordToken } from './operands';
import { type Reader, replace } from './reader';

/** Reads `(expression)`. */
export function readGroup(r: Reader): number {
  const { tree, start, end } = r;
  r.depth++;
  r.advance();
  const inner = readExpression(r);
  if (!r.at(Token.CloseParenthesis) && !r.isOver) {
    reportStray(r, Node.Group);
    const rest = r.skipTo(Token.CloseParenthesis);
    if (rest >= 0) {
      tree.link(inner, rest);
    }
  }
  close(r, Token.CloseParenthesis, ')', start, end);
  return tree.parent(Node.Group, start, Math.max(r.lastEnd, end), inner);
}

/** Reads `[a, b]` or the arguments of a call, whose name is `first`. */
export function readBrackets(r: Reader, kind: Node.List | Node.Call, start: number, first = -1): number {
  const { tree } = r;
  const closing = kind === Node.List ? Token.CloseBracket : Token.CloseParenthesis;
  const openStart = r.start;
  const openEnd = r.end;
  r.depth++;
  r.advance();
  let head = first;
  let last = first;
  const add = (node: number) => {
    if (node >= 0) {
      last = last < 0 ? node : tree.link(last, node);
      head = head < 0 ? node : head;
    }
  };
  while (!r.at(closing) && !r.isOver) {
    const before = r.start;
    add(kind === Node.Call ? readArgument(r) : readExpression(r));
    if (r.at(Token.Comma)) {
      r.advance();
    } else if (!r.at(closing) && !r.isOver) {
      reportStray(r, kind);
      if (r.start === before) {
        add(r.take(Node.Error));
      } else if (!beginsItem(r.token)) {
        add(r.skipTo(Token.Comma, closing));
        if (r.at(Token.Comma)) {
          r.advance();
        }
      }
    }
  }
  close(r, closing, kind === Node.List ? ']' : ')', openStart, openEnd);
  return tree.parent(kind, start, Math.max(r.lastEnd, openEnd), head);
}

/** Passes the closing bracket, or says that it is missing. */
function close(r: Reader, token: Token, sign: string, openStart: number, openEnd: number): void {
  r.depth--;
  if (r.at(token)) {
    r.advance();
  } else if (!r.isLineBroken) {
    r.report(
      'unclosed-bracket',
      openStart,
      openEnd,
      `This bracket is not closed. Put \`${sign}\` where it ends.`,
      replace(`Put ${sign} at the end`, r.lastEnd, r.lastEnd, sign, false),
    );
  }
}

/** `expression` or `name: expression` */
function readArgument(r: Reader): number {
  const { tree, start } = r;
  const at = isWordToken(r.token) ? r.afterToken() : -1;
  const isNamed = at >= 0 && (r.codes[at] === 58 || isAssign(r.codes, at));
  if (!isNamed) {
    const expression = readExpression(r);
    return tree.parent(Node.Argument, tree.starts[expression], tree.ends[expression], expression);
  }
  const name = r.take(Node.Name);
  if (r.at(Token.Assign)) {
    reportEqualsForColon(r, 'an argument');
  }
  r.advance();
  const value = tree.link(name, readExpression(r));
  return tree.parent(Node.Argument, start, Math.max(r.tree.ends[value], r.lastEnd), name);
}

export function reportEqualsForColon(r: Reader, what: string): void {
  r.report(
    'equals-for-colon',
    r.start,
    r.end,
    `The name of ${what} is followed by a colon: \`name: value\`. Write \`:\` for \`=\`.`,
    replace('Write a colon', skipBack(r), r.end, ':'),
  );
}

/** Where the white space before the current token begins, so that `name = 5` turns into `name: 5`. */
function skipBack(r: Reader): number {
  return skipBlanks(r.codes, r.lastEnd) === r.start ? r.lastEnd : r.start;
}

const beginsItem = (token: Token): boolean =>
  token === Token.Name || token === Token.Number || token === Token.Text || token === Token.Hash;

function reportStray(r: Reader, kind: Node): void {
  if (r.isLineBroken) {
    return;
  }
  if (beginsItem(r.token) && kind !== Node.Group) {
    const list = kind === Node.List ? 'a list' : 'a call';
    r.report(
      'missing-comma',
      r.start,
      r.end,
      `Found \`${r.currentText}\` behind a complete value. The parts of ${list} are parted by commas: write one before it.`,
      replace('Put a comma before it', r.lastEnd, r.lastEnd, ',', false),
    );
    return;
  }
  const wanted = kind === Node.Group ? '`)`' : kind === Node.List ? '`,` or `]`' : '`,` or `)`';
  r.report(
    'unexpected-text',
    r.start,
    r.end,
    `Found \`${r.currentText}\` where ${wanted} was expected. Take it out, or write an operator before it.`,
  );
}
