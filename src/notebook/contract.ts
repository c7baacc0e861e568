import type { Diagnostic } from '../text';

/** One cell as an editor shows it. */
export interface SheetCell {
  readonly kind: 'prose' | 'calculation';
  /** With `\n` line ends, without fences and separators. */
  readonly text: string;
  /** Where it came from: plain JSON, handed back unchanged by the editor, absent for a new cell. */
  readonly origin?: CellOrigin;
}

/** The exact bytes' text of a cell, so that an untouched cell is written as it was read. */
export interface CellOrigin {
  /** Source from the end of the cell before to the end of this one: separator, fences and all. */
  readonly slice: string;
  /** The cell's text when it was read; while it is equal, `slice` is written. */
  readonly text: string;
  readonly kind: SheetCell['kind'];
  /** Where the cell's own bytes begin in `slice`; before it lie blank lines and the parting comment. */
  readonly body: number;
  /** Which cell of the file it was, from 0: a cell that still follows the same neighbour keeps what lies between. */
  readonly order: number;
}

/** A sheet file, read. */
export interface SheetFile {
  readonly cells: readonly SheetCell[];
  /** What follows the last cell, a byte order mark, the line end in use; plain JSON. */
  readonly origin: FileOrigin;
  /** Problems of the file itself, such as an unclosed fence or bytes that are not UTF-8; spans are file offsets. */
  readonly notices: readonly Diagnostic[];
  /** False when nothing in it may be evaluated or written back as something else (binary, conflict markers). */
  readonly editable: boolean;
}

export interface FileOrigin {
  readonly tail: string;
  readonly lineEnd: '\n' | '\r\n';
  readonly byteOrderMark: boolean;
  /** The bytes in base64 when they were not UTF-8: they are written back as they were. */
  readonly bytes?: string;
}

/** The keys of the front matter that mean something here; others survive untouched in the text. */
export interface FrontMatter {
  readonly title?: string;
  readonly project?: string;
  readonly prepared_by?: string;
  readonly checked_by?: string;
  readonly date?: string;
  readonly revision?: string;
  readonly code?: string;
  readonly units?: 'US' | 'SI';
  /** Set by one who has read the sheet's cautions: the editor and the terminal then leave them out, a report never. */
  readonly cautions?: 'acknowledged';
  readonly report?: ReportShape;
}

/** The papers that a sheet can leave as. */
export const reportShapes = ['load memo', 'service report', 'circuit schedule'] as const;
export type ReportShape = (typeof reportShapes)[number];
