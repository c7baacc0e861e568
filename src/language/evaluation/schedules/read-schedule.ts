import type { Type } from '../../checking/type';
import { ownUnit, type QuantityOf } from '../../checking/types';
import { uncertaintyOf } from '../coverage';
import { GradientSum } from '../gradient-sum';
import type { Machine } from '../machine';
import { isMissing } from '../sites';
import type { ColumnTotal, Value } from '../value';

type ScheduleOf = Extract<Type, { kind: 'schedule' }>;

/** Quantities of which the sum over the rows says something: their units. Voltages and single currents are not among them. */
const summable = ['W', 'J', 'ft', 'USD', 'EUR', 'kg'];

let summableDimensions: ReadonlySet<unknown> | undefined;

function isSummable({ quantity }: QuantityOf): boolean {
  summableDimensions ??= new Set(summable.map((unit) => ownUnit(unit).type.dimension));
  return summableDimensions.has(quantity.dimension);
}

/** A schedule as a list of its rows, each a record of its cells. `read` makes a value of an item of a list. */
export function readSchedule(
  machine: Machine,
  { columns, written }: ScheduleOf,
  first: number,
  readList: (element: Type, slot: number) => readonly Value[],
): Value {
  const cells = new Map<string, readonly Value[]>();
  const totals: ColumnTotal[] = [];
  let rows = 0;
  let slot = first;
  for (const [name, element] of columns) {
    if (element.kind !== 'unknown' && !isMissing(machine.objects[slot])) {
      const values = readList(element, slot);
      cells.set(name, values);
      rows = Math.max(rows, values.length);
      if (element.kind === 'quantity' && isSummable(element)) {
        totals.push({ column: name, ...totalOf(machine, element, slot) });
      }
    }
    slot++;
  }
  const items = Array.from({ length: rows }, (_, row): Value => {
    const fields = new Map<string, Value>();
    for (const name of columns.keys()) {
      fields.set(name, cells.get(name)?.[row] ?? nothing);
    }
    return { kind: 'record', name: 'row', fields };
  });
  return {
    kind: 'list',
    items,
    schedule: { columns: [...columns].map((column, i) => columnOf(column, i < written)), totals },
  };
}

const nothing: Value = { kind: 'absent', because: 'the column has no value that can be used' };

const columnOf = ([name, type]: [string, Type], isWritten: boolean) => ({
  name,
  isWritten,
  ...(type.kind === 'quantity' && { unit: type.unit, unitIsDerived: type.unitIsDerived === true }),
});

/**
 * The sum over the rows, and of how many where cells are empty; absent where a row has no value because of a problem,
 * since a total that leaves a load out is a wrong one.
 */
function totalOf(machine: Machine, element: QuantityOf, slot: number): Omit<ColumnTotal, 'column'> {
  const values = machine.objects[slot] as Float64Array;
  const holes = machine.holes.get(values);
  const unknown = [...(holes?.values() ?? [])].filter(({ isEmpty }) => !isEmpty).length;
  if (unknown > 0 || holes?.size === values.length) {
    return { total: { kind: 'absent', because: `${unknown || holes?.size} rows have no value here` } };
  }
  const sum = new GradientSum();
  let base = 0;
  const gradients = machine.uncertain.items(slot);
  for (let row = 0; row < values.length; row++) {
    base += holes?.has(row) ? 0 : values[row];
    const gradient = gradients?.[row];
    if (gradient) {
      sum.add(gradient, 1);
    }
  }
  const gradient = sum.take();
  const total: Value = {
    kind: 'quantity',
    base,
    type: element.quantity,
    unit: element.unit,
    unitIsDerived: element.unitIsDerived === true,
    ...(gradient && { uncertainty: uncertaintyOf(base, gradient) }),
  };
  return { total, ...(holes && { rows: values.length - holes.size }) };
}
