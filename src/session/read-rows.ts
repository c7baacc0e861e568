import { CsvError, parse } from 'csv-parse/sync';
import type { GivenRows, SheetProblem } from '../language';
import type { ProblemCode } from '../text';

/** Larger files are not read: a hundred thousand rows are less. */
const largestFile = 16 * 1024 * 1024;

/** Separators between cells, the likeliest first; which one a file uses shows in its heading. */
const separators = [',', ';', '\t'];

/** Reads a file of rows: comma-separated values in UTF-8, the first row naming the columns. */
export function readRows(path: string, bytes: Uint8Array): GivenRows | SheetProblem {
  const text = textOf(path, bytes);
  if (typeof text !== 'string') {
    return text;
  }
  const heading = /^[\r\n]*([^\r\n]*)/.exec(text)![1];
  const delimiter = separators.find((one) => heading.includes(one)) ?? ',';
  let records: string[][];
  try {
    records = parse(text, { delimiter, relax_column_count: true, skip_empty_lines: true });
  } catch (error) {
    if (!(error instanceof CsvError)) {
      throw error;
    }
    return refused('broken-rows', `"${path}", line ${lineOf(error)}: ${reasonFor(error)}`);
  }
  const [head, ...rows] = placed(text, records, delimiter);
  if (!head) {
    return refused('no-rows', `"${path}" is empty. Its first line names the columns, parted by commas.`);
  }
  return { path, head, rows: rows.filter((row) => row.texts.some((cell) => cell !== '')) };
}

function textOf(path: string, bytes: Uint8Array): string | SheetProblem {
  if (bytes.length > largestFile) {
    return refused(
      'file-too-large',
      `"${path}" holds ${bytes.length} bytes; a file of rows may hold ${largestFile}. Part it into several files.`,
    );
  }
  if (bytes.includes(0)) {
    return refused(
      'binary-file',
      `"${path}" holds zero bytes, as programs and spreadsheets do. Save the sheet of the spreadsheet as CSV in UTF-8.`,
    );
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes); // Takes the byte order mark away, too.
  } catch {
    return refused(
      'not-utf-8',
      `"${path}" holds bytes that are not UTF-8 text, so its signs cannot be told. Save it as CSV in UTF-8.`,
    );
  }
}

const refused = (code: ProblemCode, message: string): SheetProblem => ({ problem: { code, message } });

const lineOf = (error: CsvError): number => (typeof error.lines === 'number' ? error.lines : 1);

function reasonFor(error: CsvError): string {
  switch (error.code) {
    case 'CSV_QUOTE_NOT_CLOSED':
      return 'a quotation mark that begins a cell is not closed. Put `"` where the cell ends.';
    case 'INVALID_OPENING_QUOTE':
      return 'a quotation mark stands within a cell. Put the whole cell in quotation marks and write the mark twice.';
    case 'CSV_INVALID_CLOSING_QUOTE':
      return 'behind a closing quotation mark the cell goes on. Write a mark within a cell twice.';
    default:
      return `it cannot be read as comma-separated values: ${error.message}`;
  }
}

/** Where each cell begins. The parser tells what cells hold, and that leaves no doubt where they stand. */
function placed(text: string, records: readonly (readonly string[])[], delimiter: string): GivenRows['rows'][number][] {
  let at = 0;
  let line = 1;
  let lineStart = 0;
  const pass = (to: number) => {
    for (; at < to; at++) {
      const c = text.charCodeAt(at);
      if (c === 10 || (c === 13 && text.charCodeAt(at + 1) !== 10)) {
        line++;
        lineStart = at + 1;
      }
    }
  };
  return records.map((texts) => {
    while (text[at] === '\r' || text[at] === '\n') {
      pass(at + 1);
    }
    const places = texts.map((cell, i) => {
      const place = { line, column: at - lineStart + 1 };
      const isQuoted = text[at] === '"';
      pass(at + (isQuoted ? cell.length + occurrences(cell, '"') + 2 : cell.length));
      pass(at + (i < texts.length - 1 ? delimiter.length : 0));
      return place;
    });
    return { texts: texts.map((cell) => cell.trim()), places };
  });
}

function occurrences(text: string, sign: string): number {
  let count = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) {
    count++;
  }
  return count;
}
