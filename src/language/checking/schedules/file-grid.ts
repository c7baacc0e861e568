import type { Diagnostic, Span } from '../../../text';
import { isUnit, readUnit } from '../../../units';
import type { Library } from '../../library';
import type { GivenRows } from '../../program';
import { parse } from '../../syntax/parser';
import { children, Node, type SyntaxTree, spanOf } from '../../syntax/tree';
import { Meaning } from '../meaning';
import { emptyCell, type Grid, type GridColumn, unreadableCell, wordAt } from './grid';

/** What a file's cells read as: one row of a table for each cell that could be a value. */
interface ReadCells {
  readonly tree: SyntaxTree;
  /** Expression of each cell, by row and column; -1 empty, -2 no value. */
  readonly nodes: Int32Array;
  /** What is wrong with the writing of a cell, by its index in `nodes`, where that is known. */
  readonly faults: ReadonlyMap<number, string>;
  readonly columns: readonly GridColumn[];
}

const known = new WeakMap<GivenRows, { readonly library: Library; readonly cells: ReadCells }>();

/** The rows of a file beside the sheet. Its cells hold values; a word is text, never a name of the sheet. */
export class FileGrid implements Grid {
  readonly meaning: Meaning;
  readonly hasNoNames = true;
  readonly mostTold = 40;
  readonly columns: readonly GridColumn[];
  readonly reportedRows: ReadonlySet<number> = new Set();
  private readonly cells: ReadCells;

  constructor(
    sheet: Meaning,
    library: Library,
    private readonly given: GivenRows,
    /** Where the sheet names the file. */
    private readonly at: Span,
  ) {
    this.cells = readCells(given, library);
    this.columns = this.cells.columns;
    this.meaning = new Meaning(this.cells.tree, sheet.cell, sheet.library);
  }

  get rows(): number {
    return this.given.rows.length;
  }

  node(row: number, column: number): number {
    return this.cells.nodes[row * this.columns.length + column];
  }

  word(row: number, column: number): string | undefined {
    const text = this.text(row, column);
    return text === '' ? undefined : text.replace(/^"([^"]*)"$/, '$1');
  }

  looksLikeWord(row: number, column: number): boolean {
    const node = this.node(row, column);
    return node === unreadableCell || wordAt(this.meaning.tree, node) !== undefined;
  }

  unreadable(row: number, column: number, name: string): Diagnostic {
    const fault = this.cells.faults.get(row * this.columns.length + column);
    const advice = fault ?? 'Write a number with its unit, or leave the cell empty.';
    return {
      code: 'unlike-cell',
      severity: 'error',
      span: this.nowhere(row, column),
      message: `\`${this.text(row, column)}\` is not one value, and the other cells of \`${name}\` are values. ${advice}`,
    };
  }

  rowProblem(row: number): Diagnostic | undefined {
    const { texts } = this.given.rows[row];
    const width = this.given.head.texts.length;
    return texts.slice(width).every((text) => text === '')
      ? undefined
      : {
          code: 'row-width',
          severity: 'error',
          span: this.nowhere(row, width),
          message: `This row has ${texts.length} cells, and the heading names ${width}. Where a comma belongs to a cell, put the cell in quotation marks.`,
        };
  }

  rowSpan(row: number): Span {
    return this.nowhere(row, 0);
  }

  /** The problem at the file's name, with its line and column in the file. Fixes do not reach into the file. */
  placed({ code, severity, span, message }: Diagnostic, row: number): Diagnostic {
    const { line, column } = this.placeOf(span, row);
    return {
      code,
      severity,
      span: this.at,
      message: `"${this.given.path}", line ${line}, column ${column}: ${message}`,
    };
  }

  private text(row: number, column: number): string {
    return this.given.rows[row].texts[column] ?? '';
  }

  private placeOf({ start }: Span, row: number): { line: number; column: number } {
    const { places } = this.given.rows[row];
    const width = this.columns.length;
    if (start < 0) {
      return places[Math.min(-1 - start, places.length - 1)];
    }
    const { starts, ends } = this.cells.tree;
    for (let column = 0; column < width; column++) {
      const node = this.node(row, column);
      if (node >= 0 && starts[node] <= start && start <= ends[node]) {
        const { line, column: first } = places[column];
        return { line, column: first + start - starts[node] };
      }
    }
    return places[0];
  }

  /** Stands for a cell that is in no tree. */
  private nowhere(_row: number, column: number): Span {
    return { start: -1 - column, end: -1 - column };
  }
}

const unsafe = /[|"\r\n]|\/\/|^[-:\s]*$/;
const bareNumber = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** Reads all cells at once, each as a table row of its own, so that one that cannot be read spoils no other. */
function readCells(given: GivenRows, library: Library): ReadCells {
  const before = known.get(given);
  if (before?.library === library) {
    return before.cells;
  }
  const headings = given.head.texts.map(readHeading);
  const width = headings.length;
  const nodes = new Int32Array(given.rows.length * width).fill(emptyCell);
  const lines = ['rows = schedule', '  | cell |'];
  let length = lines.join('\n').length;
  /** Index of the cell in `nodes` by where its row begins. */
  const order = new Map<number, number>();
  for (const [row, { texts }] of given.rows.entries()) {
    for (let column = 0; column < width; column++) {
      const text = texts[column] ?? '';
      const quoted = /^"[^"|\r\n]*"$/.test(text);
      if (text === '') {
        continue;
      }
      nodes[row * width + column] = unreadableCell;
      if (quoted || !unsafe.test(text)) {
        const { unit } = headings[column];
        const line = `  | ${unit !== '' && bareNumber.test(text) ? `${text} ${unit}` : text} |`;
        lines.push(line);
        order.set(length + '\n  '.length, row * width + column);
        length += '\n'.length + line.length;
      }
    }
  }
  const tree = parse(lines.join('\n'), library.vocabulary, { readUnit });
  const cells: ReadCells = {
    tree,
    nodes,
    faults: fill(tree, order, nodes),
    columns: headings.map(({ name }) => ({ name, nameNode: -1 })),
  };
  known.set(given, { library, cells });
  return cells;
}

/** Notes the expression of each cell; one that shows a problem is no value. */
function fill(tree: SyntaxTree, order: ReadonlyMap<number, number>, nodes: Int32Array): Map<number, string> {
  const rows = [...children(tree, tree.statements[0])].filter((child) => tree.kinds[child] === Node.Row);
  const faults = new Map<number, string>();
  let next = 0;
  const problems = tree.diagnostics;
  for (const row of rows) {
    const cell = tree.firstChildren[row];
    const { end } = spanOf(tree, row);
    let broken: Diagnostic | undefined;
    for (; next < problems.length && problems[next].span.start <= end; next++) {
      broken ??= problems[next].span.start >= tree.starts[row] ? problems[next] : undefined;
    }
    const kind = cell < 0 ? Node.Error : (tree.kinds[cell] as Node);
    const index = order.get(tree.starts[row]);
    if (index === undefined) {
      continue;
    }
    nodes[index] = broken || kind === Node.Error || kind === Node.Empty ? unreadableCell : cell;
    if (broken && !saysNothingMore.has(broken.code)) {
      faults.set(index, broken.message);
    }
  }
  return faults;
}

/** What a cell that is no value says anyhow. */
const saysNothingMore: ReadonlySet<string> = new Set(['unexpected-text', 'missing-expression', 'unexpected-character']);

/** `load (kVA)` and `load [kVA]` name a column and the unit of its bare numbers. */
function readHeading(text: string): { name: string; unit: string } {
  const [, title, round, square] = /^(.*?)\s*(?:\(([^()]*)\)|\[([^[\]]*)\])?$/su.exec(text)!;
  const unit = (round ?? square ?? '').trim();
  const hasUnit = unit !== '' && isUnit(unit);
  const name = (hasUnit ? title : text).replace(/[^\p{L}\p{N}_]+/gu, '_').replace(/^[\d_]+|_+$/gu, '');
  return { name, unit: hasUnit ? unit : '' };
}
