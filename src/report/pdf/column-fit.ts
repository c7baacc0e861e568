import type { Column } from '../document';

/** Sizes of letters that tables are set in, in points: the largest is taken in which no word is parted. */
const sizes = [8.5, 8, 7.5, 7, 6.5, 6];

/** About how wide a letter of the fonts is, in parts of its size. */
const letterWidth = 0.62;

/** How wide the columns of a table stand in a width, what lies between their texts not counted, and in which letters. All in points. */
export function fitColumns(
  columns: readonly Column[],
  width: number,
): { readonly widths: readonly number[]; readonly fontSize: number } | undefined {
  const letters = columns.flatMap((column) => column.letters ?? []);
  if (letters.length < columns.length) {
    return undefined;
  }
  const words = letters.map(({ word }) => word);
  const texts = letters.map(({ word, text }) => Math.max(word, text));
  const fontSize = sizes.find((size) => sum(words) * size * letterWidth <= width) ?? sizes[sizes.length - 1];
  const room = width / (fontSize * letterWidth);
  // Each column has room for its words first; what is left goes to those whose texts would take more lines.
  const spare = Math.max(0, room - sum(words));
  const wanted = sum(texts) - sum(words);
  const share = wanted > 0 ? Math.min(1, spare / wanted) : 0;
  const fitted = words.map((word, i) => word + share * (texts[i] - word));
  return { widths: fitted.map((letters) => (letters / sum(fitted)) * width), fontSize };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
