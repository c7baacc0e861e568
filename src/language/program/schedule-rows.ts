import type { Span } from '../../text';
import type { Statement } from '../checking/binding';
import type { ComputedColumn, ScheduleMeaning } from '../checking/schedules/schedule-meaning';
import type { Runner } from '../evaluation/runner';
import { columnSlots, replayRow, scheduleOf } from '../evaluation/schedules/row-replay';
import { Listener, type WatchedCall } from '../evaluation/watch';
import type { ArgumentRecord, CallRecord, RowResult } from '../program';
import { nodesBelow } from '../syntax/navigation';
import { Node, spanOf, textOf } from '../syntax/tree';
import { callRecord } from './call-record';
import { RowShape } from './row-shape';

/** The rows of a schedule whose calls leave facts: calls in its formulas, and the call that its columns are laid out for. */
export function* rowsOf(runner: Runner, statement: Statement): Generator<RowResult> {
  const schedule = scheduleOf(statement);
  if (!schedule || !statement.succeeded) {
    return;
  }
  const formulas = schedule.computed.filter(
    (column) => column.type.kind !== 'unknown' && calls(statement, column).size > 0,
  );
  const called = new Set(formulas.flatMap((column) => [...calls(statement, column)]));
  const shape = RowShape.of(runner, statement, called);
  if (formulas.length === 0 && !shape) {
    return;
  }
  let tellsFailure = true;
  for (let row = 0; row < schedule.rows; row++) {
    const place = placeOf(schedule, row);
    const records = formulas
      .filter((column) => hasInputs(runner, statement, column, row))
      .flatMap((column) => callsInRow(runner, statement, column, row, place));
    const shaped: CallRecord[] = shape?.callIn(row, place, tellsFailure) ?? [];
    tellsFailure &&= shaped.every(({ unjudged }) => unjudged === undefined);
    records.push(...shaped);
    if (records.length > 0) {
      yield {
        tree: schedule.cells.tree,
        node: place.node,
        span: place.reach,
        calls: records,
        placed: (problem) => schedule.placed(problem, row),
      };
    }
  }
}

/** Where a row stands, in the tree of the cells. */
export interface RowPlace {
  readonly span: Span;
  /** Everything that counts as standing in the row. */
  readonly reach: Span;
  readonly node: number;
}

function placeOf(schedule: ScheduleMeaning, row: number): RowPlace {
  const span = schedule.rowSpan(row);
  const node = Math.max(0, ...schedule.written.map(({ nodes }) => nodes[row]));
  return { span, reach: span.start < 0 ? { start: span.start, end: Number.MAX_SAFE_INTEGER } : span, node };
}

/** The functions of the library that a formula calls. */
function calls({ cell }: Statement, { expression }: ComputedColumn): ReadonlySet<string> {
  const { meaning } = cell;
  const names = [...nodesBelow(meaning.tree, expression)].flatMap((node) => {
    const call = meaning.tree.kinds[node] === Node.Call ? meaning.calls.get(node) : undefined;
    return call?.kind === 'library' && !('operation' in call.definition) ? [call.definition.name] : [];
  });
  return new Set(names);
}

/** False where a row lacks what the formula reads: then no function is to be called. */
function hasInputs({ machine }: Runner, statement: Statement, { reads }: ComputedColumn, row: number): boolean {
  const slots = columnSlots(scheduleOf(statement)!, statement.slot);
  return reads.every((read) => {
    const list = machine.objects[slots.get(read)!];
    return typeof list === 'object' && list !== null && !machine.holes.get(list)?.has(row);
  });
}

function callsInRow(
  runner: Runner,
  statement: Statement,
  column: ComputedColumn,
  row: number,
  place: RowPlace,
): CallRecord[] {
  const listener = new Listener('facts');
  replayRow(runner, statement, { column, row }, () => undefined, listener);
  return listener.calls.map((watched) => recordIn(statement, watched, row, place));
}

/** A call in a formula as one of the row's: its arguments stand in the cells that they are read from. */
function recordIn(statement: Statement, watched: WatchedCall, row: number, { span, node }: RowPlace): CallRecord {
  const schedule = scheduleOf(statement)!;
  const { tree } = watched.site.meaning;
  const given = new Map<string, ArgumentRecord>();
  const argumentNodes = new Map<string, number>();
  const record = callRecord(watched);
  for (const { name, node: written } of watched.arguments) {
    const argument = record.arguments.get(name)!;
    const column =
      argument.given && tree.kinds[written] === Node.Name
        ? schedule.written.find((one) => one.name === textOf(tree, written))
        : undefined;
    const cell = column ? column.nodes[row] : -1;
    if (cell >= 0) {
      argumentNodes.set(name, cell);
    }
    given.set(name, { ...argument, span: cell >= 0 ? spanOf(schedule.cells.tree, cell) : span });
  }
  return { ...record, cell: statement.cell.id, span, nameSpan: span, arguments: given, node, argumentNodes };
}
