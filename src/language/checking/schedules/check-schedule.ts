import type { Diagnostic, ProblemCode } from '../../../text';
import { children, Node } from '../../syntax/tree';
import { Checker } from '../checker';
import type { Type } from '../type';
import { unknownType } from '../types';
import { checkComputedColumn } from './computed-columns';
import { FileGrid } from './file-grid';
import { fileNode, rowsOf } from './file-rows';
import { emptyCell, type Grid, InlineGrid, wordColumns } from './grid';
import type { ComputedColumn, ScheduleMeaning, WrittenColumn } from './schedule-meaning';
import { RowProblems, typeColumn } from './written-columns';

/**
 * Checks a schedule: types each column from all of its cells, and its formulas for one row. What is wrong with a single
 * row or column leaves the others standing, so it does not count as a problem of the statement.
 */
export function checkSchedule(c: Checker, node: number): Type {
  const { tree } = c;
  const nameNode = tree.firstChildren[node];
  const grid = gridOf(c, node);
  if (!grid || grid.columns.length === 0) {
    return unknownType; // The parser has spoken, or the file cannot be had.
  }
  const problems: Diagnostic[] = [...headingProblems(c, grid, node)];
  const name = c.text(nameNode);
  const written = writtenColumns(c, node, grid, problems);
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
  const type: Type = { kind: 'schedule', columns: known, written: written.length };
  c.meaning.types[node] = type;
  return type;
}

/** The table below the line, or the rows of the file that it names. */
function gridOf(c: Checker, node: number): Grid | undefined {
  const file = fileNode(c.tree, node);
  if (file < 0) {
    return new InlineGrid(c.meaning, node);
  }
  const rows = rowsOf(c, node, file);
  return rows && new FileGrid(c.meaning, c.context.library, rows, c.span(file));
}

/** What is to be said of a file's rows as a whole. */
function headingProblems(c: Checker, grid: Grid, node: number): Diagnostic[] {
  const file = fileNode(c.tree, node);
  if (file < 0) {
    return [];
  }
  const report = (code: ProblemCode, message: string): Diagnostic => ({
    code,
    severity: 'error',
    span: c.span(file),
    message,
  });
  const nameless = grid.columns.flatMap(({ name }, i) => (name === '' && isFilled(grid, i) ? [i + 1] : []));
  return [
    ...(grid.rows === 0 ? [report('no-rows', `${c.text(file)} has a heading and no rows below it.`)] : []),
    ...nameless.map((column) =>
      report(
        'bad-column-name',
        `The heading of column ${column} in ${c.text(file)} is no name that formulas could use. Write letters, digits and \`_\`.`,
      ),
    ),
  ];
}

const isFilled = (grid: Grid, column: number): boolean =>
  Array.from({ length: grid.rows }).some((_, row) => grid.node(row, column) !== emptyCell);

function writtenColumns(c: Checker, schedule: number, grid: Grid, problems: Diagnostic[]): WrittenColumn[] {
  const cells = new Checker(c.context, grid.meaning);
  const rows = new RowProblems(grid);
  for (let row = 0; row < grid.rows; row++) {
    rows.add(grid.rowProblem(row), row);
  }
  const isWords = wordColumns(grid);
  const seen = new Set<string>();
  const written: WrittenColumn[] = [];
  for (const [index, { name, nameNode }] of grid.columns.entries()) {
    if (name === '') {
      continue; // Its heading was reported.
    }
    if (seen.has(name)) {
      problems.push(repeated(c, nameNode < 0 ? fileNode(c.tree, schedule) : nameNode, name));
      continue;
    }
    seen.add(name);
    written.push(typeColumn(cells, { grid, index, name, isWords: isWords[index] }, rows));
  }
  problems.push(...rows.all());
  c.namesMissing ||= cells.namesMissing;
  return written;
}

const repeated = (c: Checker, node: number, name: string): Diagnostic => ({
  code: 'duplicate-column',
  severity: 'error',
  span: c.span(node),
  message: `Two columns are called \`${name}\`, so it is not clear which one a formula means. Rename one of them; until then the first one counts.`,
});
