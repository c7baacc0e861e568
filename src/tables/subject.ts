import type { TableFile } from './table-file';

/** What a cell of a column holds. A list names the only words allowed. */
export type CellType = 'size' | 'number' | 'text' | readonly string[];

export interface Column {
  /** Heading with unit, as shown to people: `Ω/kft, uncoated Cu, 75 °C`. */
  readonly label: string;
  readonly type: CellType;
  /** True when the printed table leaves cells of this column empty. */
  readonly blank?: true;
  /** Bounds for numbers; a value outside is a slip of the pen, not a table. */
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** A promise about a table's rows in their order, beside the bounds and the unique keys. */
export interface Check<Row> {
  /** `resistance falls as the size grows` */
  readonly promise: string;
  /** The rows that break it, each with the column at fault and what was found. */
  readonly broken: (rows: readonly Row[]) => readonly Broken<Row>[];
}

export interface Broken<Row> {
  readonly row: Row;
  /** The row that it is out of step with. */
  readonly beside?: Row;
  readonly column: string;
  readonly found: string;
}

/**
 * One kind of table: its columns, its key, its promises and the files that ship. The column ids are the paths of the
 * row's fields (`ohmPerKft.Cu`), so that the row's shape, its schema and its headings come from one declaration.
 */
export interface Subject<Row> {
  readonly id: string;
  readonly columns: Readonly<Record<string, Column>>;
  /** Columns that together name a row. The first orders the rows when it holds sizes or numbers. */
  readonly key: readonly string[];
  readonly checks: readonly Check<Row>[];
  readonly files: readonly TableFile[];
  /** True when a code edition cannot be served without this table. */
  readonly needed: boolean;
}

/** Any file may add these columns to those of its subject. */
export const sharedColumns: Readonly<Record<string, Column>> = {
  note: { label: 'note', type: 'text', blank: true },
  /** Ids of the row's cells that no reproduction confirmed, parted by spaces. */
  unconfirmed: { label: 'from memory', type: 'text', blank: true },
  /** Section or table, where a row stands elsewhere than its file's table. */
  reference: { label: 'reference', type: 'text', blank: true },
  /** Name of one of the file's other sources. */
  source: { label: 'source', type: 'text', blank: true },
};
