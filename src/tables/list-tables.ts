import { columnsOf } from './rows';
import { subjects } from './subjects';
import { type TableFile, tableNumber } from './table-file';

/** What people are told about a table: where it comes from, what it presupposes and what stands in it. */
export interface TableInfo {
  /** `ampacity`; several editions and standards may stand under one subject. */
  readonly subject: string;
  readonly title: string;
  readonly standard: string;
  readonly editions: readonly string[];
  /** `Table 310.16`, in its newest edition. */
  readonly table: string;
  readonly conditions: readonly string[];
  readonly basis: 'published' | 'memory';
  readonly provenance: string;
  readonly rows: number;
  /** Headings with units, and the cells as printed; null where the table has none. */
  readonly columns: readonly string[];
  readonly cells: readonly (readonly (string | null)[])[];
  readonly file?: string;
}

/** Every table that ships, and the workspace's own after them. */
export function listTables(overrides: readonly TableFile[] = []): TableInfo[] {
  return subjects.flatMap((subject) => {
    const labels = columnsOf(subject);
    return [...subject.files, ...overrides.filter((file) => file.subject === subject.id)].map((file) => ({
      subject: subject.id,
      title: file.title,
      standard: file.standard,
      editions: file.editions,
      table: tableNumber(file, file.editions[file.editions.length - 1]),
      conditions: file.conditions,
      basis: file.basis,
      provenance: file.provenance,
      rows: file.rows.length,
      columns: file.columns.map((id) => labels[id].label),
      cells: file.rows,
      ...(file.path === undefined ? {} : { file: file.path }),
    }));
  });
}
