import { headings } from './data-headings';
import type { DataTable, ReportDocument } from './document';
import { documentDate } from './document-date';
import { stampZip } from './zip-dates';

/**
 * The report's figures as a workbook, a sheet a table: units in the headings, numbers as numbers with full precision.
 * Every text is written as a text, so that none becomes a formula.
 */
export async function writeXlsx({ data, date }: ReportDocument): Promise<Uint8Array> {
  const { default: writeWorkbook } = await import('write-excel-file/universal');
  const sheets = data.map((table) => ({
    sheet: table.name,
    stickyRowsCount: 1,
    columns: widths(table).map((width) => ({ width })),
    data: [
      headings(table).map((value) => ({ value, type: String, fontWeight: 'bold' as const })),
      ...table.rows.map((row) => row.map(cell)),
    ],
  }));
  const blob = await writeWorkbook(sheets.length > 0 ? sheets : [nothing]).toBlob();
  return stampZip(new Uint8Array(await blob.arrayBuffer()), documentDate(date));
}

const nothing = { sheet: 'Results', data: [[{ value: 'The sheet has no results.', type: String }]] };

const cell = (value: string | number | undefined) =>
  value === undefined || value === ''
    ? null
    : typeof value === 'number'
      ? { value, type: Number }
      : { value: value.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, ' '), type: String };

/** As wide as the longest text, within reason, in characters. */
const widths = (table: DataTable): number[] =>
  headings(table).map((title, column) =>
    Math.min(
      60,
      Math.max(title.length + 2, ...table.rows.slice(0, 200).map((row) => String(row[column] ?? '').length)),
    ),
  );
