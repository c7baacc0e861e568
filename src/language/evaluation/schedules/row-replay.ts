import type { Statement } from '../../checking/binding';
import type { ComputedColumn, ScheduleMeaning } from '../../checking/schedules/schedule-meaning';
import type { Watcher } from '../call-site';
import { Compiler } from '../compiler';
import type { Frame } from '../frame';
import type { Machine } from '../machine';
import { Replay } from '../replay';
import type { Runner } from '../runner';
import type { Value } from '../value';

/** The schedule that a statement defines; undefined for any other statement. */
export const scheduleOf = ({ cell, node }: Statement): ScheduleMeaning | undefined => cell.meaning.schedules.get(node);

const slotsOf = new WeakMap<ScheduleMeaning, { readonly first: number; readonly slots: ReadonlyMap<string, number> }>();

/** The first slots of a schedule's columns, by name. */
export function columnSlots(schedule: ScheduleMeaning, first: number): ReadonlyMap<string, number> {
  let known = slotsOf.get(schedule);
  if (known?.first !== first) {
    const slots = new Map([...schedule.written, ...schedule.computed].map(({ name }, i) => [name, first + i]));
    known = { first, slots };
    slotsOf.set(schedule, known);
  }
  return known.slots;
}

/** Runs the formula of one row beside the sheet's own slots, so that every intermediate result can be looked at. */
export function replayRow<T>(
  runner: Runner,
  statement: Statement,
  { column, row }: { readonly column: ComputedColumn; readonly row: number },
  use: (replay: Replay) => T,
  watcher?: Watcher,
): T {
  const { machine } = runner;
  const slots = columnSlots(scheduleOf(statement)!, statement.slot);
  const mark = machine.mark();
  const outer = machine.row;
  try {
    const locals = new Map<string, number>();
    for (const read of column.reads) {
      const item = machine.extend(1);
      takeItem(machine, slots.get(read)!, row, item);
      locals.set(read, item);
    }
    const compiler = new Compiler(machine, true, watcher);
    const frame: Frame = { meaning: statement.cell.meaning, locals, slots: new Map(), inner: new Map() };
    compiler.statement(frame, column.expression, machine.extend(1));
    machine.row = row;
    runner.execute(statement, mark.codeLength, machine.codeLength);
    return use(new Replay(machine, frame));
  } finally {
    machine.row = outer;
    machine.forget(mark);
  }
}

/** Runs the expression of one cell beside the sheet's own slots. */
export function replayCell<T>(runner: Runner, statement: Statement, node: number, use: (replay: Replay) => T): T {
  const { machine } = runner;
  const mark = machine.mark();
  try {
    const frame: Frame = { meaning: scheduleOf(statement)!.cells, slots: new Map(), inner: new Map() };
    new Compiler(machine, true).statement(frame, node, machine.extend(1));
    runner.execute(statement, mark.codeLength, machine.codeLength);
    return use(new Replay(machine, frame));
  } finally {
    machine.forget(mark);
  }
}

/** The value of an expression in a cell of a schedule; undefined in a heading or a formula, which have none of their own. */
export function valueInCell(runner: Runner, statement: Statement, node: number): Value | undefined {
  const { cells, written } = scheduleOf(statement)!;
  const { starts, ends } = statement.cell.tree;
  if (cells.tree !== statement.cell.tree) {
    return undefined; // Its cells stand in a file.
  }
  for (const { nodes } of written) {
    const cell = nodes.find((one) => one >= 0 && starts[one] <= starts[node] && ends[node] <= ends[one]);
    if (cell !== undefined) {
      return replayCell(runner, statement, cell, (run) => run.value(node));
    }
  }
  return undefined;
}

/** Puts one item of a list, with its doubt, in a slot. */
export function takeItem(machine: Machine, list: number, row: number, item: number): void {
  const { uncertain } = machine;
  const values = machine.objects[list] as Float64Array | unknown[];
  if (values instanceof Float64Array) {
    machine.numbers[item] = values[row];
  } else {
    machine.objects[item] = Array.isArray(values) ? values[row] : values;
  }
  const gradient = uncertain.items(list)?.[row];
  if (gradient) {
    uncertain.setGradient(item, gradient);
    uncertain.keep(item, 1); // What is about to run begins a new tape.
  }
  uncertain.setDoubt(item, uncertain.itemDoubts(list)?.[row]);
}
