import { type Cell, type Column, plain } from './document';

/** In characters. A column whose texts are longer lets them run over several lines. */
const widest = 26;
const narrowest = 4;

/** What the space beside a text and the bold letters of a title take, in characters. */
const padding = 3.5;

/** How much wider bold letters are, in which titles are set. */
const boldness = 1.13;

/** Rows beyond these are much like them. */
const mostRead = 300;

/** Columns as wide, compared with each other, as what stands in them: no word is parted, and a short column is narrow. */
export function fittedColumns(columns: readonly Column[], rows: readonly (readonly Cell[])[]): Column[] {
  return columns.map((column, i) => {
    const texts = rows.slice(0, mostRead).map((row) => plain(row[i] ?? []));
    const words = [column.title, ...texts].flatMap((text) => text.split(/\s+/));
    const width = Math.max(longest(words), Math.min(longest(texts), widest), narrowest);
    const letters = { word: Math.max(boldness * longest(column.title.split(/\s+/)), longest(words)), text: width };
    return { width: width + padding, letters, ...column };
  });
}

const longest = (texts: readonly string[]): number => texts.reduce((most, { length }) => Math.max(most, length), 0);
