import { showNumber } from '../../../display';
import { type Conductor, resistanceReference } from '../../../functions';
import { knownSizes, type Size, type Tables } from '../../../tables';
import { captioned, table } from '../../markdown';

/** The size before, the size itself and the one after it in a list, each with what it is to the size. */
export function neighbours(sizes: readonly Size[], size: Size): [place: string, size: Size][] {
  const index = sizes.findIndex(({ text }) => text === size.text);
  const placed: [string, Size | undefined][] =
    index < 0
      ? []
      : [
          ['next down', sizes[index - 1]],
          ['', sizes[index]],
          ['next up', sizes[index + 1]],
        ];
  return placed.filter((entry): entry is [string, Size] => entry[1] !== undefined);
}

/** The size in bold, a neighbour with what it is. */
export const sizeCell = ([place, { text }]: [place: string, size: Pick<Size, 'text'>]): string =>
  place === '' ? `**${text}**` : `${text} (${place})`;

/** The neighbours of a size that has no ampacity here, such as those in mm², by the table of its resistance. */
export function nextSizes(tables: Tables, conductor: Conductor): string {
  const reference = resistanceReference(tables, conductor);
  if (!reference) {
    return '';
  }
  const { source, referenceC, printed } = reference;
  const of = (size: Size) => {
    const found = resistanceReference(tables, { ...conductor, size });
    return found?.source.table === source.table && size.unit === conductor.size.unit ? found : undefined;
  };
  const listed = knownSizes().filter((size) => of(size));
  const rows = neighbours(listed, conductor.size).map((entry) => [
    sizeCell(entry),
    `${showNumber(of(entry[1])!.printed.value, 5)} ${printed.unit}`,
  ]);
  return rows.length > 1
    ? captioned('Next sizes', [source], table(['', `${conductor.stranding}, at ${referenceC} °C`], rows))
    : '';
}
