import { columnsOf } from './rows';
import { sharedColumns } from './subject';
import { subjects } from './subjects';
import { editionLabel, type TableFile, tableNumber } from './table-file';

/** The values of a table that were seen in no public reproduction. */
export interface ValuesFromMemory {
  readonly title: string;
  /** `Table 220.55`, and the editions that it holds for. */
  readonly table: string;
  readonly editions: readonly string[];
  /** What names each row, and its cells from memory with their headings. */
  readonly rows: readonly { readonly key: string; readonly cells: readonly (readonly [string, string])[] }[];
}

/** Every shipped value that is marked as from memory, table by table, in the tables' own order. */
export function valuesFromMemory(): ValuesFromMemory[] {
  return subjects.flatMap((subject) =>
    subject.files.flatMap((file) => {
      const rows = file.rows.flatMap((cells) => rowFromMemory(subject, file, cells));
      return rows.length === 0
        ? []
        : [
            {
              title: file.title,
              table: tableNumber(file, file.editions[file.editions.length - 1]),
              editions: file.editions.map((edition) => editionLabel(file.standard, edition)),
              rows,
            },
          ];
    }),
  );
}

function rowFromMemory(
  subject: (typeof subjects)[number],
  file: TableFile,
  cells: readonly (string | null)[],
): ValuesFromMemory['rows'][number][] {
  const cell = (column: string) => cells[file.columns.indexOf(column)] ?? null;
  const source = cell('source');
  const { basis } = (source !== null && file.otherSources?.[source]) || file;
  const unconfirmed = new Set((cell('unconfirmed') ?? '').split(' '));
  const labels = columnsOf(subject);
  const recalled = file.columns.flatMap((column): [string, string][] => {
    const text = cell(column);
    const isValue = !subject.key.includes(column) && !Object.hasOwn(sharedColumns, column);
    return text !== null && isValue && (basis === 'memory' || unconfirmed.has(column))
      ? [[labels[column].label, text]]
      : [];
  });
  // A row may be nothing but its key, such as a standard rating.
  const keyAlone = basis === 'memory' && recalled.length === 0;
  const key = subject.key.map((column) => cell(column) ?? 'any').join(', ');
  return recalled.length > 0 || keyAlone ? [{ key, cells: recalled }] : [];
}
