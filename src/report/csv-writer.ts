import { stringify } from 'csv-stringify/sync';
import { headings } from './data-headings';
import type { DataTable, ReportDocument } from './document';

/**
 * The report's figures as comma-separated values (RFC 4180): one block a table with its name above, a blank line
 * between. Numbers have full precision and no unit; the unit stands in the column's heading.
 */
export function writeCsv({ data }: ReportDocument): string {
  return (data.length > 0 ? data : [nothing])
    .map((table) =>
      stringify([[safe(table.name)], headings(table).map(safe), ...table.rows.map((row) => row.map(safe))], {
        record_delimiter: '\r\n',
      }),
    )
    .join('\r\n');
}

const nothing: DataTable = { name: 'Results', columns: [{ title: 'The sheet has no results.' }], rows: [] };

/** A text that a spreadsheet would take for a formula gets an apostrophe in front; numbers stay numbers. */
function safe(cell: string | number | undefined): string | number {
  if (typeof cell !== 'string') {
    return cell ?? '';
  }
  return /^[=+\-@\t\r\n＝＋－＠]/.test(cell) ? `'${cell}` : cell;
}
