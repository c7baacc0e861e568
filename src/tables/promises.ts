import type { LoadedRow } from './rows';
import type { Table } from './table';

/** A promise that a table in force does not keep, and the rows it shows in: the one at fault, then the one beside it. */
export interface BrokenPromise {
  readonly promise: string;
  readonly rows: readonly LoadedRow<unknown>[];
  readonly column: string;
  readonly found: string;
}

/** Runs every declared check of a table over its rows in force. */
export function brokenPromises<Row>(table: Table<Row>): BrokenPromise[] {
  const loaded = new Map(table.rows.map((row) => [row.found.row, row]));
  return table.subject.checks.flatMap((check) =>
    check.broken(table.all).map(({ row, beside, column, found }) => ({
      promise: check.promise,
      rows: [row, beside].flatMap((each) => (each === undefined ? [] : (loaded.get(each) ?? []))),
      column,
      found,
    })),
  );
}
