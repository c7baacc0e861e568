import type { Diagnostic } from '../../../text';
import { children, Node } from '../../syntax/tree';
import { Checker } from '../checker';
import type { Type } from '../type';
import { unknownType } from '../types';
import { checkComputedColumn } from './computed-columns';
import { type Grid, InlineGrid, wordColumns } from './grid';
import type { ComputedColumn, ScheduleMeaning, WrittenColumn } from './schedule-meaning';
import { RowProblems, typeColumn } from './written-columns';

/**
 * Checks a schedule: types each column from all of its cells, and its formulas for one row. What is wrong with a single
 * row or column leaves the others standing, so it does not count as a problem of the statement.
 */
export function checkSchedule(c: Checker, node: number): Type {
  const { tree } = c;
  const nameNode = tree.firstChildren[node];
  const grid: Grid = new InlineGrid(c.meaning, node);
  if (grid.columns.length === 0) {
    return unknownType; // The parser has spoken.
  }
  const problems: Diagnostic[] = [];
  const name = c.text(nameNode);
  const written = writtenColumns(c, grid, problems);
  const known = new Map<string, Type>(written.map((column) => [column.name, column.type]));
  const formulas = [...children(tree, node)].filter((child) => tree.kinds[child] === Node.Column);
  const names = formulas.map((column) => c.text(tree.firstChildren[column]));
  const computed: ComputedColumn[] = [];
  for (const [i, column] of formulas.entries()) {
    const found = checkComputedColumn(c, column, { known, further: names.slice(i), schedule: name, problems });
    if (found) {
      computed.push(found);
      known.set(found.name, found.type);
    }
  }
  const labels = written.find(({ words }) => words)?.words;
  const meaning: ScheduleMeaning = {
    name,
    rows: grid.rows,
    cells: grid.meaning,
    written,
    computed,
    problems,
    rowName: (row) => `row ${row + 1}${labels?.[row] === undefined ? '' : ` (\`${labels[row]}\`)`}`,
    placed: (problem, row) => grid.placed(problem, row),
    rowSpan: (row) => grid.rowSpan(row),
  };
  c.meaning.schedules.set(node, meaning);
  const type: Type = { kind: 'schedule', columns: known };
  c.meaning.types[node] = type;
  return type;
}

function writtenColumns(c: Checker, grid: Grid, problems: Diagnostic[]): WrittenColumn[] {
  const cells = new Checker(c.context, grid.meaning);
  const rows = new RowProblems(grid, problems);
  const isWords = wordColumns(grid);
  const seen = new Set<string>();
  const written: WrittenColumn[] = [];
  for (const [index, { name, nameNode }] of grid.columns.entries()) {
    if (name === '') {
      continue; // Its heading was reported.
    }
    if (seen.has(name)) {
      problems.push(repeated(c, nameNode, name));
      continue;
    }
    seen.add(name);
    written.push(typeColumn(cells, { grid, index, name, isWords: isWords[index] }, rows));
  }
  c.namesMissing ||= cells.namesMissing;
  return written;
}

const repeated = (c: Checker, node: number, name: string): Diagnostic => ({
  code: 'duplicate-column',
  severity: 'error',
  span: c.span(node),
  message: `Two columns are called \`${name}\`, so it is not clear which one a formula means. Rename one of them; until then the first one counts.`,
});
