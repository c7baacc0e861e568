import { toBase } from '../../../units';
import type { Meaning } from '../../checking/meaning';
import type { ComputedColumn, ScheduleMeaning, WrittenColumn } from '../../checking/schedules/schedule-meaning';
import { Node, Operator, textOf } from '../../syntax/tree';
import type { Compiler } from '../compiler';
import type { Frame } from '../frame';
import { compileAside } from '../lists/compile-lists';
import type { Hole } from '../lists/holes';
import { MapSite } from '../lists/map-site';
import { noValue } from '../machine';
import { type MovingCell, WrittenColumnSite } from './written-column-site';

/** Compiles a schedule: a list for each column, in slots one behind the other. */
export function compileSchedule(compiler: Compiler, frame: Frame, schedule: ScheduleMeaning, slot: number): void {
  const { written, computed } = schedule;
  const slots = new Map<string, number>();
  for (const column of written) {
    slots.set(column.name, slot + slots.size);
    compileWritten(compiler, frame, schedule, column, slots.get(column.name)!);
  }
  for (const column of computed) {
    const target = slot + slots.size;
    compileComputed(compiler, frame, schedule, column, slots, target);
    slots.set(column.name, target);
  }
}

function compileWritten(
  compiler: Compiler,
  frame: Frame,
  schedule: ScheduleMeaning,
  { name, type, nodes, words, missing }: WrittenColumn,
  target: number,
): void {
  const isNumber = type.kind === 'quantity' || type.kind === 'boolean';
  const length = schedule.rows;
  const fixed: Float64Array | unknown[] = isNumber
    ? new Float64Array(length).fill(Number.NaN)
    : new Array(length).fill(noValue);
  const moving: MovingCell[] = [];
  const cells: Frame = schedule.cells === frame.meaning ? frame : { meaning: schedule.cells };
  for (let row = 0; row < length; row++) {
    const word = words?.[row];
    const node = nodes[row];
    if (word !== undefined) {
      fixed[row] = word;
      continue;
    }
    if (node < 0) {
      continue;
    }
    const value = literalAt(schedule.cells, node);
    if (value === undefined) {
      const slot = compiler.own(1);
      compiler.expression(cells, node, slot);
      moving.push({ row, slot });
    } else {
      fixed[row] = value;
    }
  }
  const holes = new Map<number, Hole>();
  for (const [row, cell] of missing) {
    holes.set(row, { place: placeOf(schedule, row), ...cell });
  }
  compiler.site(
    new WrittenColumnSite({
      fixed,
      moving,
      holes,
      element: type,
      target,
      hole: (row) => ({
        place: placeOf(schedule, row),
        why: `its cell in \`${name}\` comes to nothing`,
        arose: { row, column: name },
      }),
    }),
  );
}

/** What a cell holds that is a plain literal; undefined for one that has to be worked out. */
function literalAt(meaning: Meaning, node: number): unknown {
  const { tree } = meaning;
  switch (tree.kinds[node] as Node) {
    case Node.Number:
      return tree.numbers[node];
    case Node.Quantity:
      return quantityAt(meaning, node, 1);
    case Node.Unary: {
      const operand = tree.firstChildren[node];
      return tree.operators[node] === Operator.Negate && tree.kinds[operand] === Node.Quantity
        ? quantityAt(meaning, operand, -1)
        : undefined;
    }
    case Node.Yes:
      return 1;
    case Node.No:
      return 0;
    case Node.Designation:
      return meaning.designations.get(node)?.value;
    default:
      return undefined;
  }
}

function quantityAt(meaning: Meaning, node: number, sign: number): number {
  const unit = meaning.unitAt(node);
  return 'problem' in unit ? Number.NaN : toBase(sign * meaning.tree.numbers[node], unit);
}

function compileComputed(
  compiler: Compiler,
  { meaning }: Frame,
  schedule: ScheduleMeaning,
  column: ComputedColumn,
  slots: ReadonlyMap<string, number>,
  target: number,
): void {
  const { name, expression, type, reads } = column;
  if (type.kind === 'unknown') {
    compiler.machine.objects[target] = noValue;
    return;
  }
  const locals = new Map(reads.map((read) => [read, compiler.own(1)]));
  const code = compileAside(compiler, { meaning, locals }, expression);
  const written = textOf(meaning.tree, expression).replace(/\s+/g, ' ');
  compiler.site(
    new MapSite({
      inputs: reads.map((read) => ({ list: slots.get(read)!, item: locals.get(read)! })),
      code,
      element: type,
      target,
      node: expression,
      length: schedule.rows,
      hole: (_, row) => ({
        place: placeOf(schedule, row),
        why: `\`${name} = ${written}\` comes to nothing there`,
        arose: { row, column: name },
      }),
    }),
  );
}

const placeOf = (schedule: ScheduleMeaning, row: number): string => `${schedule.rowName(row)} of \`${schedule.name}\``;
