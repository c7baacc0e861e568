import type { ColumnTotal, QuantityValue, ScheduleView, Value } from '../language';
import { fromBase, type Unit, withPrefix } from '../units';
import { usualDigits } from './number';
import type { Block } from './output';
import { showMagnitude, showValue } from './value';

/** Rows beyond these are counted, not shown, where nobody asks for more. */
const usualRows = 200;

/** Up to so many digits a number is shown whole: what stands in a cell is mostly what its author wrote there. */
const writtenDigits = 6;

type Column = ScheduleView['columns'][number];

/**
 * A schedule as a table: units in the heading, numbers below one another, totals where a sum says something. `most` is how
 * many rows are shown.
 */
export function scheduleTable(
  rows: readonly Value[],
  { columns, totals }: ScheduleView,
  most = usualRows,
): Block & { kind: 'table' } {
  const shown = rows.slice(0, most);
  const cellsOf = (name: string) =>
    shown.map((row): Value | undefined => (row.kind === 'record' ? row.fields.get(name) : undefined));
  const total = (name: string) => totals.find(({ column }) => column === name);
  const printed = columns.map((column) => columnText(column, cellsOf(column.name), total(column.name)));
  const lines = shown.map((_, row) => printed.map(({ cells }) => cells[row]));
  const more = rows.length - shown.length;
  if (more > 0) {
    lines.push(columns.map((_, i) => (i === 0 ? `… ${more} more rows` : '…')));
  }
  const totalled = totals.length > 0 && rows.length > 1;
  if (totalled) {
    lines.push(printed.map(({ foot }, i) => (i === 0 ? `Total ${foot}`.trim() : foot)));
  }
  return {
    kind: 'table',
    head: printed.map(({ head }) => head),
    rows: lines,
    numeric: columns.map(({ unit }) => unit !== undefined),
    ...(totalled && { totalled }),
    ...(more <= 0 && rows.length > 1 && { sortable: true }),
  };
}

/** One column as text; all its numbers are in one unit, which the heading has. */
function columnText(
  { name, unit, unitIsDerived, isWritten }: Column,
  cells: readonly (Value | undefined)[],
  total: ColumnTotal | undefined,
) {
  if (!unit) {
    return { head: name, cells: cells.map(cellText), foot: '' };
  }
  const shownIn = unitIsDerived ? withPrefix(largest(cells), unit) : unit;
  const text = (value: Value | undefined) =>
    value?.kind === 'quantity' ? magnitudeIn(value, shownIn, isWritten) : cellText(value);
  const count = total?.rows === undefined || total.total.kind === 'absent' ? '' : ` (${total.rows} of ${cells.length})`;
  return {
    head: shownIn.symbol === '' ? name : `${name} (${shownIn.symbol})`,
    cells: cells.map(text),
    foot: total ? text(total.total) + count : '',
  };
}

const cellText = (value: Value | undefined): string => (!value || value.kind === 'absent' ? '–' : showValue(value));

const magnitudeIn = (value: QuantityValue, unit: Unit, isWritten: boolean): string =>
  showMagnitude({ ...value, unit, unitIsDerived: false }, isWritten ? digitsOf(fromBase(value.base, unit)) : undefined);

/** The digits that show a number as it was written, where it is short; else the usual ones. */
function digitsOf(value: number): number {
  for (let digits = usualDigits; digits <= writtenDigits; digits++) {
    if (Math.abs(Number(value.toPrecision(digits)) - value) <= 1e-12 * Math.abs(value)) {
      return digits;
    }
  }
  return usualDigits;
}

/** The largest magnitude in a column, which its unit is chosen for. */
const largest = (cells: readonly (Value | undefined)[]): number =>
  cells.reduce((most, cell) => (cell?.kind === 'quantity' ? Math.max(most, Math.abs(cell.base)) : most), 0);
