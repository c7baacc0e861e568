import { CsvError, parse as parseCells } from 'csv-parse/sync';
import { children, contextWords, Node, parse, reservedWords, type SyntaxTree, statementWords } from '../language';
import { parseUnit, readUnit } from '../units';
import type { EditedSheet } from './contract';

/** A schedule made of cells of a spreadsheet. */
export interface PastedSchedule {
  /** A name that the sheet does not use yet. */
  readonly name: string;
  /** What stands behind the name: `= schedule` and its rows. */
  readonly text: string;
  /** What a person should look at, each a sentence. */
  readonly notes: readonly string[];
}

/** More rows than this read better from a file. */
const mostRows = 1000;

/** Cells as a spreadsheet copies them, rows on lines and columns parted by tabs, as a schedule of the sheet. */
export function pastedSchedule(sheet: EditedSheet, clipboard: string): PastedSchedule | { readonly problem: string } {
  const [head, ...rows] = rowsOf(clipboard);
  if (!head || head.length < 2 || rows.length === 0) {
    return {
      problem:
        'The clipboard holds no spreadsheet cells. Copy a heading row and the rows below it, two columns or more, and try again.',
    };
  }
  if (rows.length > mostRows) {
    return {
      problem: `${rows.length} rows are too many to stand in a cell. Save them as a CSV file beside the sheet and write \`loads = schedule "loads.csv"\`.`,
    };
  }
  const names = columnNames(head);
  const columns = names.map((name, i) =>
    column(
      sheet,
      name,
      head[i],
      rows.map((row) => row[i] ?? ''),
    ),
  );
  const lines = [names, names.map(() => '---'), ...rows.map((_, row) => columns.map(({ cells }) => cells[row]))];
  const widths = names.map((_, i) => Math.max(...lines.map((line) => line[i].length)));
  const text = lines.map((line) => `  | ${line.map((cell, i) => cell.padEnd(widths[i])).join(' | ')} |`).join('\n');
  const extra = rows.filter((row) => row.slice(head.length).some((cell) => cell !== '')).length;
  const notes = columns.flatMap(({ note }) => note ?? []);
  if (extra > 0) {
    notes.push(
      `${extra === 1 ? 'One row has' : `${extra} rows have`} cells beyond the last heading, which are left out.`,
    );
  }
  return { name: freeName(sheet), text: `= schedule\n${text}`, notes };
}

/** True for cells of a spreadsheet, which a person may well paste as they are; false for statements with tabs in them. */
export function isSpreadsheet({ program }: EditedSheet, clipboard: string): boolean {
  return clipboard.includes('\t') && parse(clipboard, program.library.vocabulary, { readUnit }).diagnostics.length > 0;
}

function rowsOf(clipboard: string): string[][] {
  let rows: string[][];
  try {
    rows = parseCells(clipboard, { delimiter: '\t', relax_column_count: true, skip_empty_lines: true });
  } catch (error) {
    if (!(error instanceof CsvError)) {
      throw error;
    }
    // Inch marks and the like, which are no quotation marks.
    rows = clipboard.split(/\r?\n/).map((line) => line.split('\t'));
  }
  return rows
    .map((row) => row.map((cell) => cell.replace(/\s+/g, ' ').trim()))
    .filter((row) => row.some((cell) => cell !== ''));
}

const words = new Set<string>([...reservedWords.keys(), ...contextWords, ...statementWords]);

/** `Load (kVA)` is called `load`. */
function columnNames(head: readonly string[]): string[] {
  const taken = new Set<string>();
  return head.map((heading, i) => {
    const plain = heading
      .replace(/[([].*$/, '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '_')
      .replace(/^_+|_+$/g, '');
    const base = plain === '' || words.has(plain) || !/^\p{L}/u.test(plain) ? `column_${plain || i + 1}` : plain;
    let name = base;
    for (let count = 2; taken.has(name); count++) {
      name = `${base}_${count}`;
    }
    taken.add(name);
    return name;
  });
}

/** A column's cells as the language writes them: values where each of them is one, else texts. */
function column(
  sheet: EditedSheet,
  name: string,
  heading: string,
  given: readonly string[],
): { readonly cells: readonly string[]; readonly note?: string } {
  const unit = /[([](.+)[)\]]\s*$/.exec(heading)?.[1].trim();
  const isUnit = unit !== undefined && !('problem' in parseUnit(unit));
  const values = given.map((cell) => (isUnit && /^[+-]?(\d+\.?\d*|\.\d+)$/.test(cell) ? `${cell} ${unit}` : cell));
  const filled = values.filter((cell) => cell !== '');
  const odd = filled.filter((cell) => !isValue(sheet, cell));
  if (odd.length === 0) {
    return { cells: values };
  }
  const isBare = filled.every((cell) => /^\p{L}[\p{L}\p{N}_]*$/u.test(cell) && !words.has(cell));
  const cells = given.map((cell) =>
    cell === '' || isBare ? cell : `"${cell.replaceAll('"', '″').replaceAll('|', '¦')}"`,
  );
  const note = `Column \`${name}\` is kept as text because of ${odd[0]}: write a number without commas, with a unit that Kilofoot knows.`;
  return /\d/.test(odd[0]) && (odd.length < filled.length || isUnit) ? { cells, note } : { cells };
}

const literals = new Set([Node.Number, Node.Quantity, Node.Designation, Node.Yes, Node.No]);

function isValue({ program }: EditedSheet, cell: string): boolean {
  const tree = parse(`value = ${cell}`, program.library.vocabulary, { readUnit });
  return tree.diagnostics.length === 0 && tree.statements.length === 1 && isLiteral(tree, tree.statements[0]);
}

function isLiteral(tree: SyntaxTree, statement: number): boolean {
  const [, value] = children(tree, statement);
  return (
    tree.kinds[statement] === Node.Definition &&
    value !== undefined &&
    tree.comments.length === 0 &&
    literals.has(tree.kinds[tree.kinds[value] === Node.Unary ? tree.firstChildren[value] : value])
  );
}

function freeName({ program }: EditedSheet): string {
  const taken = program.names();
  let name = 'rows';
  for (let count = 2; taken.has(name); count++) {
    name = `rows_${count}`;
  }
  return name;
}
