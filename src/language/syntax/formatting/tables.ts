import type { Edit } from '../../../text';
import { gapBefore } from './gaps';
import { Piece, type PieceOfText } from './pieces';

/** Cells of one table line, each as it will read. */
interface TableLine {
  readonly start: number;
  readonly end: number;
  readonly cells: readonly string[];
}

/** Makes the bars of consecutive table lines stand below one another; `lines` hold the pieces of each line, bars included. */
export function alignTable(text: string, lines: readonly (readonly PieceOfText[])[]): Edit[] {
  const rows = lines.map((line) => readLine(text, line));
  const widths: number[] = [];
  for (const { cells } of rows) {
    cells.forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, widthOf(cell));
    });
  }
  return rows.flatMap(({ start, end, cells }) => {
    const padded = cells.map((cell, column) => cell + ' '.repeat(widths[column] - widthOf(cell)));
    const newText = `| ${padded.join(' | ')} |`;
    return newText === text.slice(start, end) ? [] : [{ span: { start, end }, newText }];
  });
}

const widthOf = (cell: string): number => [...cell].length;

function readLine(text: string, pieces: readonly PieceOfText[]): TableLine {
  const start = pieces[0].start;
  const end = pieces.at(-1)!.end;
  const written = text.slice(start, end);
  if (/^[|:\s-]*-[|:\s-]*$/.test(written)) {
    const inner = written.slice(1, written.endsWith('|') ? -1 : undefined);
    return { start, end, cells: inner.split('|').map((cell) => cell.trim()) };
  }
  const cells: string[] = [];
  let cell = '';
  pieces.forEach((piece, index) => {
    if (index === 0) {
      return;
    }
    if (piece.piece === Piece.Bar) {
      cells.push(cell);
      cell = '';
    } else {
      const gap = cell === '' ? '' : gapBefore(text, pieces, index);
      cell += gap + text.slice(piece.start, piece.end);
    }
  });
  if (pieces.at(-1)!.piece !== Piece.Bar) {
    cells.push(cell);
  }
  return { start, end, cells };
}
