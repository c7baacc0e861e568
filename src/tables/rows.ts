import type { TableReference } from '../text';
import type { Found } from './contract';
import { parseSize } from './size';
import { type Column, type Subject, sharedColumns } from './subject';
import { type TableFile, tableNumber } from './table-file';

/** A row in force, with the file it came from. */
export interface LoadedRow<Row> {
  readonly found: Found<Row>;
  readonly key: string;
  readonly file: TableFile;
  /** Its place in `file.rows`. */
  readonly index: number;
}

/** Columns of a subject with those that any file may add. */
export const columnsOf = (subject: {
  readonly columns: Subject<never>['columns'];
}): Readonly<Record<string, Column>> => ({
  ...subject.columns,
  ...sharedColumns,
});

/**
 * The rows of several files of one subject as one table. A later file's row takes the place of an earlier one with the
 * same key; other rows are added. Files are taken as they are: shipped ones are checked by tests, others when read.
 */
export function loadRows<Row>(subject: Subject<Row>, files: readonly TableFile[], edition: string): LoadedRow<Row>[] {
  const byKey = new Map<string, LoadedRow<Row>>();
  for (const file of files) {
    const own = file.editions.includes(edition) ? edition : file.editions[file.editions.length - 1];
    for (const [index, cells] of file.rows.entries()) {
      const row = loadRow(subject, file, own, cells, index);
      byKey.set(row.key, row);
    }
  }
  return inOrder(subject, [...byKey.values()]);
}

/** Told by the row's source, not by a cell of its own. */
const silent = new Set(['unconfirmed', 'reference', 'source']);

function loadRow<Row>(
  subject: Subject<Row>,
  file: TableFile,
  edition: string,
  cells: readonly (string | null)[],
  index: number,
): LoadedRow<Row> {
  const cell = (column: string): string | null => cells[file.columns.indexOf(column)] ?? null;
  const unconfirmed = new Set((cell('unconfirmed') ?? '').split(' '));
  const row: Record<string, unknown> = {};
  const shown: [string, string][] = [];
  for (const [id, column] of Object.entries(columnsOf(subject))) {
    const text = cell(id);
    if (id in subject.columns) {
      setPath(row, id.split('.'), text === null || column.type !== 'number' ? text : Number(text));
    }
    if (text !== null && !silent.has(id)) {
      shown.push([column.label, unconfirmed.has(id) ? `${text} (from memory)` : text]);
    }
  }
  return {
    found: { row: row as Row, source: referenceOf(file, edition, cell('source'), cell('reference')), shown },
    key: subject.key.map(cell).join(' | '),
    file,
    index,
  };
}

function setPath(target: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [first, ...rest] = path;
  if (rest.length === 0) {
    target[first] = value;
    return;
  }
  target[first] ??= {};
  setPath(target[first] as Record<string, unknown>, rest, value);
}

/** Where a row stands, in words that another person can follow. */
function referenceOf(file: TableFile, edition: string, source: string | null, place: string | null): TableReference {
  const { provenance, basis } = (source !== null && file.otherSources?.[source]) || file;
  return {
    standard: file.standard,
    edition,
    table: place ?? tableNumber(file, edition),
    basis,
    provenance,
    ...(file.path === undefined ? {} : { file: file.path }),
  };
}

/** Rows that a workspace adds find their place by size or number; tables keyed by words keep the printed order. */
function inOrder<Row>(subject: Subject<Row>, rows: LoadedRow<Row>[]): LoadedRow<Row>[] {
  const first = subject.key[0];
  const type = subject.columns[first].type;
  const place = (row: LoadedRow<Row>): number => {
    const text = row.file.rows[row.index][row.file.columns.indexOf(first)];
    if (text === null || text === undefined) {
      return Number.NEGATIVE_INFINITY; // An open lower end stands first.
    }
    return type === 'size' ? (parseSize(text)?.mm2 ?? 0) : Number(text);
  };
  return type === 'size' || type === 'number' ? rows.sort((a, b) => place(a) - place(b) || 0) : rows;
}
