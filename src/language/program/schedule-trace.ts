import type { Statement } from '../checking/binding';
import type { Runner } from '../evaluation/runner';
import { columnSlots, replayRow, scheduleOf } from '../evaluation/schedules/row-replay';
import { isMissing } from '../evaluation/sites';
import type { AssumptionStep, Step, Trace } from '../evaluation/trace';
import { once, rowSteps } from '../evaluation/trace-steps';
import { Listener } from '../evaluation/watch';

/** How a schedule came about: what was assumed in its cells, and one row worked out, as the others are. */
export function scheduleTrace(runner: Runner, statement: Statement): Trace {
  const { written, computed, cells, rowName, rows } = scheduleOf(statement)!;
  const assumed = written.flatMap(({ nodes }) =>
    Array.from(nodes).flatMap((node) => cells.designations.get(node)?.assumptions ?? []),
  );
  const steps: Step[] = [...once(assumed.map((text): AssumptionStep => ({ kind: 'assumption', text })))];
  const row = rowToShow(runner, statement);
  const shown = rows === 0 ? [] : computed.filter(({ type }) => type.kind !== 'unknown');
  const inRow = shown.flatMap((column) => {
    const listener = new Listener('steps and facts');
    const use = (replay: Parameters<typeof rowSteps>[0]) => rowSteps(replay, listener, column.name, column.expression);
    return replayRow(runner, statement, { column, row }, use, listener);
  });
  return { steps: inRow.length > 0 ? [...steps, { kind: 'row', row: rowName(row), steps: inRow }] : steps };
}

/** The first row in which every formula has a value; the first of all where there is none. */
function rowToShow({ machine }: Runner, statement: Statement): number {
  const schedule = scheduleOf(statement)!;
  const slots = columnSlots(schedule, statement.slot);
  const holes = schedule.computed.map(({ name }) => {
    const list = machine.objects[slots.get(name)!];
    return typeof list === 'object' && list !== null && !isMissing(list) ? machine.holes.get(list) : undefined;
  });
  for (let row = 0; row < schedule.rows; row++) {
    if (!holes.some((one) => one?.has(row))) {
      return row;
    }
  }
  return 0;
}
