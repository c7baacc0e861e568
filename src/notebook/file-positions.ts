import { type Diagnostic, type LineColumn, LineIndex, type Span } from '../text';
import type { SheetCell, SheetFile } from './contract';
import { readFence } from './fence';
import { linesOf } from './lines';

/** A diagnostic with its place in the file, counted from 1. */
export interface PlacedDiagnostic extends Diagnostic {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Where the cells of a file that was read, and not edited since, stand in that file. Offsets skip the byte order mark. */
export class FilePositions {
  /** The file as text. */
  readonly text: string;
  private readonly lines: LineIndex;
  private readonly maps: readonly CellMap[];

  constructor(file: SheetFile) {
    let at = 0;
    const maps: CellMap[] = [];
    for (const cell of file.cells) {
      maps.push(mapOf(cell, at));
      at += cell.origin?.slice.length ?? 0;
    }
    this.maps = maps;
    this.text = file.cells.map((cell) => cell.origin?.slice ?? '').join('') + file.origin.tail;
    this.lines = new LineIndex(this.text);
  }

  /** The file offset of an offset in the text of the cell at `index`; outside offsets count as the nearest end. */
  offset(index: number, offset: number): number {
    const { inText, inFile, end } = this.maps[index];
    const line = lastUpTo(inText, offset);
    return Math.max(inFile[0], Math.min(inFile[line] + offset - inText[line], end));
  }

  /** A stretch of the cell at `index` as a stretch of the file. */
  span(index: number, { start, end }: Span): Span {
    return { start: this.offset(index, start), end: this.offset(index, end) };
  }

  /** The offset in the text of the cell at `index` of a file offset; undefined outside the cell. */
  inCell(index: number, offset: number): number | undefined {
    const { inText, inFile, end } = this.maps[index];
    if (offset < inFile[0] || offset > end) {
      return undefined;
    }
    const line = lastUpTo(inFile, offset);
    // The fence's own margin, taken off each line, belongs to the end of the line before.
    const length = line + 1 < inText.length ? inText[line + 1] - 1 - inText[line] : end - inFile[line];
    return inText[line] + Math.min(offset - inFile[line], length);
  }

  /** The stretch of the file that holds the text of the cell at `index`, without fence and separators. */
  extent(index: number): Span {
    return { start: this.maps[index].inFile[0], end: this.maps[index].end };
  }

  /** The line and column of a file offset. */
  at(offset: number): LineColumn {
    return this.lines.at(offset);
  }

  /** A diagnostic whose spans are file offsets, with its lines and columns. */
  place(diagnostic: Diagnostic): PlacedDiagnostic {
    const start = this.at(diagnostic.span.start);
    const end = this.at(diagnostic.span.end);
    return { ...diagnostic, line: start.line, column: start.column, endLine: end.line, endColumn: end.column };
  }

  /** A diagnostic of the cell at `index` told in file offsets, its fixes and related places too. */
  inFile(index: number, diagnostic: Diagnostic, indexOf: (cell: string) => number): Diagnostic {
    return {
      ...diagnostic,
      span: this.span(index, diagnostic.span),
      fixes: diagnostic.fixes?.map((fix) => ({
        ...fix,
        edits: fix.edits.map((edit) => ({ ...edit, span: this.span(index, edit.span) })),
      })),
      related: diagnostic.related?.map((place) =>
        place.file
          ? place
          : {
              span: this.span(place.cell === undefined ? index : indexOf(place.cell), place.span),
              message: place.message,
            },
      ),
    };
  }
}

/** Where each line of a cell's text begins, in the text and in the file. */
interface CellMap {
  readonly inText: readonly number[];
  readonly inFile: readonly number[];
  readonly end: number;
}

/** The index of the last of these rising offsets that is not behind `offset`; the first one's where all are. */
function lastUpTo(offsets: readonly number[], offset: number): number {
  let low = 0;
  let high = offsets.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (offsets[middle] <= offset) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

function mapOf({ kind, origin }: SheetCell, sliceStart: number): CellMap {
  if (!origin) {
    return { inText: [0], inFile: [sliceStart], end: sliceStart };
  }
  const source = origin.slice.slice(origin.body);
  const bodyStart = sliceStart + origin.body;
  const fence = kind === 'calculation' ? readFence(source) : undefined;
  const lines = fence ? fence.content : linesOf(source);
  if (lines.length === 0) {
    const empty = bodyStart + (fence?.closing?.start ?? 0);
    return { inText: [0], inFile: [empty], end: empty };
  }
  const inText: number[] = [];
  let at = 0;
  for (const line of lines) {
    inText.push(at);
    at += line.end - line.start + 1;
  }
  return { inText, inFile: lines.map((line) => bodyStart + line.start), end: bodyStart + lines.at(-1)!.end };
}
