import { parseSize } from './size';
import type { Broken, Check } from './subject';

type Read<Row> = (row: Row) => number | null | undefined;

/** The column's numbers never fall from row to row (or rise strictly); rows without a value are passed over. */
export function rising<Row>(column: string, read: Read<Row>, how: 'strictly' | 'or stay' = 'strictly'): Check<Row> {
  return monotone(`${column} rises from row to row`, column, read, (before, now) =>
    how === 'strictly' ? now > before : now >= before,
  );
}

/** The column's numbers fall from row to row, or stay where printing leaves too few digits. */
export function falling<Row>(column: string, read: Read<Row>, how: 'strictly' | 'or stay' = 'strictly'): Check<Row> {
  return monotone(`${column} falls from row to row`, column, read, (before, now) =>
    how === 'strictly' ? now < before : now <= before,
  );
}

function monotone<Row>(
  promise: string,
  column: string,
  read: Read<Row>,
  inOrder: (before: number, now: number) => boolean,
): Check<Row> {
  return {
    promise,
    broken(rows) {
      const wrong: Broken<Row>[] = [];
      let before: number | undefined;
      let beside: Row | undefined;
      for (const row of rows) {
        const now = read(row);
        if (now === null || now === undefined) {
          continue;
        }
        if (before !== undefined && !inOrder(before, now)) {
          wrong.push({ row, beside, column, found: `${now} after ${before}` });
        }
        before = now;
        beside = row;
      }
      return wrong;
    },
  };
}

/** Holds for every row that has both values. */
export function eachRow<Row>(promise: string, column: string, fails: (row: Row) => string | undefined): Check<Row> {
  return {
    promise,
    broken: (rows) =>
      rows.flatMap((row) => {
        const found = fails(row);
        return found === undefined ? [] : [{ row, column, found }];
      }),
  };
}

/** The value lies within a fraction of what another column implies. */
export function near<Row>(
  promise: string,
  column: string,
  read: Read<Row>,
  expected: Read<Row>,
  fraction: number,
): Check<Row> {
  return eachRow(promise, column, (row) => {
    const value = read(row);
    const wanted = expected(row);
    if (typeof value !== 'number' || typeof wanted !== 'number' || Math.abs(value - wanted) <= fraction * wanted) {
      return undefined;
    }
    return `${value} where ${wanted} follows`;
  });
}

/** Metal area in mm² of a row's size, for checks along the sizes. */
export const areaOf = (size: string): number => parseSize(size)?.mm2 ?? Number.NaN;
