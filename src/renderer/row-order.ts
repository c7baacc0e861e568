/** Which way a column is sorted; `none` is the order of the sheet. */
export type SortOrder = 'none' | 'ascending' | 'descending';

export const nextOrder: Readonly<Record<SortOrder, SortOrder>> = {
  none: 'ascending',
  ascending: 'descending',
  descending: 'none',
};

/** `12 AWG` before `120`, upper and lower case alike. */
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/**
 * The numbers of the rows, sorted by the texts of one column: numbers by size, texts by their letters with numbers in them
 * by size, conductors from thin to thick, and what has no value last whichever way. Rows that are equal keep the sheet's
 * order.
 */
export function rowOrder(cells: readonly string[], order: SortOrder): number[] {
  const rows = cells.map((_, row) => row);
  if (order === 'none') {
    return rows;
  }
  const keys = cells.map(keyOf);
  const sign = order === 'ascending' ? 1 : -1;
  return rows.sort((a, b) => {
    const [x, y] = [keys[a], keys[b]];
    if (x === undefined || y === undefined) {
      return Number(x === undefined) - Number(y === undefined);
    }
    return sign * (typeof x === 'number' && typeof y === 'number' ? x - y : collator.compare(String(x), String(y)));
  });
}

/** What a cell is sorted by; undefined for one without a value. */
function keyOf(cell: string): number | string | undefined {
  const text = cell.trim();
  if (text === '' || text === '–') {
    return undefined;
  }
  const number = Number(text.replace(/,/g, '').replace(/^[−-]/, '-').split(' ± ')[0]);
  return Number.isNaN(number) ? (areaOf(text) ?? text) : number;
}

/**
 * A conductor's area in kcmil, from a designation that begins with its size. Only the order counts here, and the tables
 * that know more are too much for a web view. Gauge numbers as ASTM B258 defines them.
 */
function areaOf(text: string): number | undefined {
  const [, number, aughts, unit] = /^(\d+)(\/0)? (AWG|kcmil)\b/.exec(text) ?? [];
  if (number === undefined) {
    return undefined;
  }
  return unit === 'kcmil'
    ? Number(number)
    : (5 * 92 ** ((36 - (aughts ? 1 - Number(number) : Number(number))) / 39)) ** 2 / 1000;
}
