import { type Codes, codesOf } from '../../../text';
import { isBroken, nodesBelow } from '../navigation';
import { isBlank, isLineBreak, isNameStart, lineEnd, nameEnd } from '../scanning/characters';
import { pairToken, signToken } from '../scanning/signs';
import { Token } from '../scanning/token';
import { Node, type SyntaxTree, unitSpanOf } from '../tree';

/** What a piece of text is, as far as the space around it goes. */
export enum Piece {
  /** A number, a name, a text and all else that is a value by itself. */
  Operand,
  /** The unit behind a number or behind `in`. */
  Unit,
  /** A word of the language: `check`, `in`, `and`. */
  Word,
  Operator,
  Power,
  /** `²` or `³` behind an operand. */
  Superscript,
  /** A plus or minus with nothing to its left. */
  Sign,
  Open,
  Close,
  Comma,
  Colon,
  Dot,
  Bar,
  Comment,
  /** A statement that could not be read, kept as it is. */
  Raw,
}

export interface PieceOfText {
  readonly piece: Piece;
  readonly start: number;
  readonly end: number;
}

/** The whole cell as pieces with white space between them. */
export function piecesOf(tree: SyntaxTree): PieceOfText[] {
  const pieces: PieceOfText[] = [];
  const codes = codesOf(tree.text);
  let at = 0;
  for (const statement of tree.statements) {
    readBetween(tree.text, codes, at, tree.starts[statement], pieces);
    if (isBroken(tree, statement)) {
      pieces.push({ piece: Piece.Raw, start: tree.starts[statement], end: tree.ends[statement] });
    } else {
      readStatement(tree, codes, statement, pieces);
    }
    at = tree.ends[statement];
  }
  readBetween(tree.text, codes, at, tree.text.length, pieces);
  return pieces;
}

function readStatement(tree: SyntaxTree, codes: Codes, statement: number, pieces: PieceOfText[]): void {
  let at = tree.starts[statement];
  const add = (piece: Piece, start: number, end: number) => {
    if (end > start) {
      readBetween(tree.text, codes, at, start, pieces);
      pieces.push({ piece, start, end });
      at = end;
    }
  };
  const later: PieceOfText[] = [];
  for (const node of nodesBelow(tree, statement)) {
    while (later.length > 0 && later.at(-1)!.start < tree.starts[node]) {
      const { piece, start, end } = later.pop()!;
      add(piece, start, end);
    }
    const { starts, ends } = tree;
    if (tree.kinds[node] === Node.Convert) {
      // The unit stands behind the children, which come later in this walk.
      later.push({ piece: Piece.Unit, ...unitSpanOf(tree, node) });
    } else if (tree.units[node] >= 0) {
      const unit = unitSpanOf(tree, node);
      add(Piece.Operand, starts[node], trimmedEnd(tree.text, unit.start));
      add(Piece.Unit, unit.start, unit.end);
    } else if (tree.firstChildren[node] < 0 && tree.kinds[node] !== Node.Parameters && !isEmptyBrackets(tree, node)) {
      const isSuperscript = tree.kinds[node] === Node.Number && '²³'.includes(tree.text.charAt(starts[node]));
      add(isSuperscript ? Piece.Superscript : Piece.Operand, starts[node], ends[node]);
    }
  }
  while (later.length > 0) {
    const { piece, start, end } = later.pop()!;
    add(piece, start, end);
  }
  readBetween(tree.text, codes, at, tree.ends[statement], pieces);
}

const isEmptyBrackets = (tree: SyntaxTree, node: number): boolean => tree.kinds[node] === Node.List;

function trimmedEnd(text: string, end: number): number {
  let at = end;
  while (isBlank(text.charCodeAt(at - 1))) {
    at--;
  }
  return at;
}

/** Signs, words of the language and comments, which are no nodes of the tree. */
function readBetween(text: string, codes: Codes, from: number, to: number, pieces: PieceOfText[]): void {
  let at = from;
  while (at < to) {
    const c = codes[at];
    if (isBlank(c) || isLineBreak(c)) {
      at++;
      continue;
    }
    const start = at;
    if (c === 47 && codes[at + 1] === 47) {
      at = lineEnd(text, at);
      pieces.push({ piece: Piece.Comment, start, end: trimmedEnd(text, at) });
    } else if (isNameStart(c)) {
      at = nameEnd(codes, at);
      pieces.push({ piece: Piece.Word, start, end: at });
    } else {
      const next = codes[at + 1];
      const pair = pairToken(c, next);
      at += pair > 0 ? 2 : 1;
      pieces.push({ piece: signPiece(pair || signToken(c), pieces.at(-1)?.piece), start, end: at });
    }
  }
}

function signPiece(token: Token, before: Piece | undefined): Piece {
  switch (token) {
    case Token.OpenParenthesis:
    case Token.OpenBracket:
      return Piece.Open;
    case Token.CloseParenthesis:
    case Token.CloseBracket:
      return Piece.Close;
    case Token.Comma:
      return Piece.Comma;
    case Token.Colon:
      return Piece.Colon;
    case Token.Dot:
      return Piece.Dot;
    case Token.Bar:
      return Piece.Bar;
    case Token.Power:
      return Piece.Power;
    case Token.Plus:
    case Token.Minus:
      return before !== undefined && endsValue(before) ? Piece.Operator : Piece.Sign;
    default:
      return Piece.Operator;
  }
}

const endsValue = (piece: Piece): boolean =>
  piece === Piece.Operand || piece === Piece.Unit || piece === Piece.Superscript || piece === Piece.Close;
