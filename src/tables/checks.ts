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

/** Among rows of one group, the value grows with the order; `falls` turns it round. Rows may stand in any order. */
export function growsWithin<Row>(
  column: string,
  {
    group,
    order,
    value,
    falls = false,
  }: {
    readonly group: (row: Row) => string;
    readonly order: (row: Row) => number;
    readonly value: (row: Row) => number;
    readonly falls?: boolean;
  },
): Check<Row> {
  const sign = falls ? -1 : 1;
  return {
    promise: `${column} ${falls ? 'falls' : 'grows'} with the size within one kind`,
    broken: (rows) =>
      rows.flatMap((row) => {
        const beside = rows.find(
          (other) =>
            order(other) < order(row) && group(other) === group(row) && sign * (value(row) - value(other)) <= 0,
        );
        return beside ? [{ row, beside, column, found: `${value(row)} after ${value(beside)}` }] : [];
      }),
  };
}

/** What a row must hold; `fails` tells what was found when it does not. */
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
