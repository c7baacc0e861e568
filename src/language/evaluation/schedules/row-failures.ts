import type { Diagnostic } from '../../../text';
import type { Statement } from '../../checking/binding';
import type { ScheduleMeaning } from '../../checking/schedules/schedule-meaning';
import { nodesBelow } from '../../syntax/navigation';
import { Node, type SyntaxTree, textOf } from '../../syntax/tree';
import { culpritOf } from '../failures';
import type { Hole } from '../lists/holes';
import type { Runner } from '../runner';
import { columnSlots, replayCell, replayRow, scheduleOf } from './row-replay';

/** Further rows that come to nothing are counted. */
const toldRows = 40;

/** Rows of a schedule whose formulas came to nothing: one report for each, at the cell that it turns on. */
export function rowFailures(runner: Runner, statement: Statement): readonly Diagnostic[] {
  const schedule = scheduleOf(statement)!;
  const { machine } = runner;
  const first = new Map<number, { readonly column: string; readonly hole: Hole }>();
  for (const [column, slot] of columnSlots(schedule, statement.slot)) {
    const list = machine.objects[slot];
    const holes = typeof list === 'object' && list !== null ? machine.holes.get(list) : undefined;
    for (const [row, hole] of holes ?? []) {
      if (hole.arose?.column === column && !first.has(row)) {
        first.set(row, { column, hole });
      }
    }
  }
  const rows = [...first].sort(([a], [b]) => a - b);
  const told = rows.slice(0, toldRows).map(([row, { column }]) => failureIn(runner, statement, schedule, row, column));
  return rows.length > told.length ? [...told, more(schedule, rows[told.length][0], rows.length - told.length)] : told;
}

function failureIn(
  runner: Runner,
  statement: Statement,
  schedule: ScheduleMeaning,
  row: number,
  name: string,
): Diagnostic {
  const column = schedule.computed.find((one) => one.name === name);
  const where = `${schedule.rowName(row)}: \`${name}\` comes to nothing.`;
  if (!column) {
    const node = schedule.written.find((one) => one.name === name)!.nodes[row];
    const { node: at, code, message } = replayCell(runner, statement, node, (run) => culpritOf(run, node));
    const { starts, ends } = schedule.cells.tree;
    return schedule.placed(
      { code, severity: 'error', span: { start: starts[at], end: ends[at] }, message: `${capital(where)} ${message}` },
      row,
    );
  }
  const { node, code, message } = replayRow(runner, statement, { column, row }, (run) =>
    culpritOf(run, column.expression),
  );
  const span = cellBehind(statement.cell.tree, node, schedule, row) ?? schedule.rowSpan(row);
  return schedule.placed({ code, severity: 'error', span, message: `${capital(where)} ${message}` }, row);
}

/** The cell of the last column named in a part of a formula: what is divided by, the argument at fault. */
function cellBehind(tree: SyntaxTree, node: number, schedule: ScheduleMeaning, row: number) {
  let found: { start: number; end: number } | undefined;
  for (const part of nodesBelow(tree, node)) {
    const column =
      tree.kinds[part] === Node.Name ? schedule.written.find(({ name }) => name === textOf(tree, part)) : undefined;
    const cell = column ? column.nodes[row] : -1;
    if (cell >= 0) {
      found = { start: schedule.cells.tree.starts[cell], end: schedule.cells.tree.ends[cell] };
    }
  }
  return found;
}

const more = (schedule: ScheduleMeaning, row: number, count: number): Diagnostic =>
  schedule.placed(
    {
      code: 'more-rows',
      severity: 'error',
      span: schedule.rowSpan(row),
      message: `${count} more rows of \`${schedule.name}\`, from ${schedule.rowName(row)} on, come to nothing in some column.`,
    },
    row,
  );

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
