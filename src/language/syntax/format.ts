import type { Edit } from '../../text';
import { gapBefore } from './formatting/gaps';
import { indentsOf } from './formatting/indents';
import { Piece, type PieceOfText, piecesOf } from './formatting/pieces';
import { alignTable } from './formatting/tables';
import { isLineBreak } from './scanning/characters';
import type { SyntaxTree } from './tree';

/**
 * The edits that lay a cell out: one space around `=` and operators and behind commas, fields indented by two,
 * tables aligned, no white space at line ends. Numbers, units, names, comments and line breaks stay as they were
 * written, and so does every statement that could not be read. Formatting what is formatted changes nothing.
 */
export function format(tree: SyntaxTree): Edit[] {
  const { text } = tree;
  const pieces = piecesOf(tree);
  const lines = linesOf(text, pieces);
  const edits: Edit[] = [];
  const edit = (start: number, end: number, newText: string) => {
    if (text.slice(start, end) !== newText) {
      edits.push({ span: { start, end }, newText });
    }
  };

  let last = 0;
  const indents = indentsOf(tree, lines);
  let table: PieceOfText[][] = [];
  const endTable = () => {
    edits.push(...(table.length > 0 ? alignTable(text, table) : []));
    table = [];
  };
  lines.forEach((line, index) => {
    const { start } = line[0];
    trimBetween(text, last, start, edit);
    edit(lineStart(text, start), start, ' '.repeat(indents[index]));
    last = line.at(-1)!.end;
    const cells = line.filter(({ piece }) => piece !== Piece.Comment);
    if (line[0].piece === Piece.Bar) {
      table.push(cells);
      return;
    }
    if (cells.length > 0) {
      endTable();
    }
    for (let i = 1; i < line.length; i++) {
      edit(line[i - 1].end, line[i].start, gapBefore(text, line, i));
    }
  });
  endTable();
  trimBetween(text, last, text.length, edit);
  return edits;
}

/** The pieces of each line that holds any. */
function linesOf(text: string, pieces: readonly PieceOfText[]): PieceOfText[][] {
  const lines: PieceOfText[][] = [];
  let last = -1;
  for (const piece of pieces) {
    if (last < 0 || holdsBreak(text, last, piece.start)) {
      lines.push([]);
    }
    lines.at(-1)!.push(piece);
    last = piece.end;
  }
  return lines;
}

function holdsBreak(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    if (isLineBreak(text.charCodeAt(at))) {
      return true;
    }
  }
  return false;
}

/** The offset where the line of `at` begins. */
function lineStart(text: string, at: number): number {
  let start = at;
  while (start > 0 && !isLineBreak(text.charCodeAt(start - 1))) {
    start--;
  }
  return start;
}

/** Takes out the white space before each line break from `from` to `to`, where nothing else stands. */
function trimBetween(
  text: string,
  from: number,
  to: number,
  edit: (start: number, end: number, text: string) => void,
): void {
  let blank = from;
  for (let at = from; at < to; at++) {
    if (isLineBreak(text.charCodeAt(at))) {
      edit(blank, at, '');
      blank = at + 1;
    }
  }
  if (to === text.length) {
    edit(blank, to, '');
  }
}
