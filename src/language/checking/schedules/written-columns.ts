import type { Diagnostic } from '../../../text';
import { Node } from '../../syntax/tree';
import { type Checker, replacing } from '../checker';
import { commonType } from '../composites';
import { describe } from '../describe';
import { check } from '../expressions';
import { powerRoute, reportMissingUnit } from '../sums';
import type { Type } from '../type';
import { plainNumberType, textType, unknownType } from '../types';
import { emptyCell, type Grid } from './grid';
import type { MissingCell, WrittenColumn } from './schedule-meaning';

interface ColumnCells {
  readonly grid: Grid;
  readonly index: number;
  readonly name: string;
  readonly isWords: boolean;
}

/** Collects problems of cells; a row tells of its first one only. */
export class RowProblems {
  private readonly told = new Set<number>();
  private readonly found: { readonly problem: Diagnostic; readonly row: number }[] = [];

  constructor(private readonly grid: Grid) {
    for (const row of grid.reportedRows) {
      this.told.add(row);
    }
  }

  /** Takes a problem of a row, unless the row has shown one already. */
  add(problem: Diagnostic | undefined, row: number): void {
    if (problem && !this.told.has(row)) {
      this.told.add(row);
      this.found.push({ problem, row });
    }
  }

  /** The problems in order of the rows. */
  all(): Diagnostic[] {
    const { grid, found } = this;
    found.sort((a, b) => a.row - b.row);
    const most = grid.mostTold ?? found.length;
    const told = found.slice(0, most).map(({ problem, row }) => grid.placed(problem, row));
    const [next] = found.slice(most);
    if (next) {
      const message = `${found.length - most} more rows cannot be used, from this one on.`;
      told.push(grid.placed({ code: 'more-rows', severity: 'error', span: next.problem.span, message }, next.row));
    }
    return told;
  }

  /** Takes the checker's reports since `from` as being about one row. */
  take(c: Checker, from: number, row: number): void {
    this.add(c.diagnostics.splice(from)[0], row);
  }
}

const unusable = (name: string): MissingCell => ({
  why: `what stands in \`${name}\` cannot be used`,
  isEmpty: false,
});

/** Finds the type that most cells of a column share, and reports the cells that do not fit. */
export function typeColumn(c: Checker, column: ColumnCells, rows: RowProblems): WrittenColumn {
  const { grid, index, name, isWords } = column;
  const nodes = new Int32Array(grid.rows).fill(-1);
  const missing = new Map<number, MissingCell>();
  for (let row = 0; row < grid.rows; row++) {
    const node = grid.node(row, index);
    if (node >= 0) {
      nodes[row] = node;
      continue;
    }
    if (node === emptyCell) {
      missing.set(row, { why: `its cell in \`${name}\` is empty`, isEmpty: true });
    } else if (!isWords || grid.word(row, index) === undefined) {
      rows.add(grid.unreadable(row, index, name), row);
      missing.set(row, unusable(name));
    }
  }
  const cells = { ...column, nodes, missing };
  return isWords ? columnOfWords(c, cells, rows) : columnOfValues(c, cells, rows);
}

interface ReadCells extends ColumnCells {
  readonly nodes: Int32Array;
  readonly missing: Map<number, MissingCell>;
}

function columnOfWords(c: Checker, { grid, index, name, nodes, missing }: ReadCells, rows: RowProblems): WrittenColumn {
  const words: (string | undefined)[] = [];
  for (let row = 0; row < grid.rows; row++) {
    const word = grid.word(row, index);
    words.push(word);
    const node = nodes[row];
    if (word !== undefined) {
      missing.delete(row);
      if (node >= 0) {
        c.meaning.types[node] = textType;
      }
    } else if (node >= 0) {
      const before = c.diagnostics.length;
      c.report(
        'unlike-cell',
        node,
        `${c.quote(node)} is no word, and the other cells of \`${name}\` are. Put it in double quotes to make it text.`,
        { fixes: [replacing('Put it in quotation marks', c.span(node), `"${c.text(node).replaceAll('"', '')}"`)] },
      );
      rows.take(c, before, row);
      missing.set(row, unusable(name));
      nodes[row] = -1;
    }
  }
  return { name, type: textType, nodes, words, missing };
}

/** Cells of one type, as far as they go together. */
interface Group {
  type: Type;
  count: number;
}

function columnOfValues(c: Checker, { grid, name, nodes, missing }: ReadCells, rows: RowProblems): WrittenColumn {
  const groups: Group[] = [];
  const groupOf = new Map<Type, Group>();
  const found: (Group | undefined)[] = [];
  for (let row = 0; row < grid.rows; row++) {
    const node = nodes[row];
    if (node < 0) {
      found.push(undefined);
      continue;
    }
    const before = c.diagnostics.length;
    const type = typeOfCell(c, grid, node, name);
    if (type.kind === 'unknown') {
      rows.take(c, before, row);
      missing.set(row, unusable(name));
      nodes[row] = -1;
      found.push(undefined);
      continue;
    }
    let group = groupOf.get(type) ?? groups.find((one) => commonType(one.type, type));
    if (!group) {
      group = { type, count: 0 };
      groups.push(group);
    }
    groupOf.set(type, group);
    group.type = commonType(group.type, type) ?? group.type;
    group.count++;
    found.push(group);
  }
  const largest = groups.reduce<Group | undefined>((a, b) => (a && a.count >= b.count ? a : b), undefined);
  for (const [row, group] of found.entries()) {
    if (group && group !== largest) {
      const before = c.diagnostics.length;
      reportUnlike(c, nodes[row], group.type, largest!.type, name);
      rows.take(c, before, row);
      missing.set(row, unusable(name));
      nodes[row] = -1;
    }
  }
  return { name, type: largest?.type ?? unknownType, nodes, missing };
}

function typeOfCell(c: Checker, grid: Grid, node: number, name: string): Type {
  if (grid.hasNoNames && c.tree.kinds[node] === Node.Name) {
    c.report(
      'unlike-cell',
      node,
      `${c.quote(node)} is a word, and the other cells of \`${name}\` are values. Write a number with its unit, or leave the cell empty.`,
    );
    return unknownType;
  }
  const before = c.diagnostics.length;
  const type = check(c, node);
  if (c.diagnostics.length > before) {
    return unknownType;
  }
  switch (type.kind) {
    case 'record':
    case 'schedule':
    case 'meter':
      c.report('not-a-cell', node, `${c.quote(node)} is ${describe(type)}: a cell holds one value.`);
      return unknownType;
    case 'list':
      if (type.element.kind !== 'object') {
        c.report('not-a-cell', node, `${c.quote(node)} is a list: a cell holds one value.`);
        return unknownType;
      }
      return type;
    default:
      return type;
  }
}

function reportUnlike(c: Checker, node: number, type: Type, others: Type, name: string): void {
  const rest = `the other cells of \`${name}\` are ${describe(others)}`;
  if (type === plainNumberType() && others.kind === 'quantity') {
    reportMissingUnit(c, node, rest, others.unit.symbol);
    return;
  }
  if (type.kind === 'quantity' && others.kind === 'quantity' && type.quantity.dimension === others.quantity.dimension) {
    c.report(
      'mixed-power-kinds',
      node,
      `${c.quote(node)} is ${describe(type)}, and ${rest}. ${powerRoute(c, type, others)}`,
    );
    return;
  }
  c.report(
    'unlike-cell',
    node,
    `${c.quote(node)} is ${describe(type)}, and ${rest}. All cells of a column are of one kind: correct it, or give it a column of its own.`,
  );
}
