import type { Value } from '../language';
import type { Block } from './output';
import { scheduleTable } from './schedule-table';
import { showValue } from './value';

/** A record as a table of its fields, a list of records as a table with a row for each; else nothing. */
export function valueTable(value: Value, most?: number): (Block & { kind: 'table' }) | undefined {
  if (value.kind === 'record') {
    return { kind: 'table', head: ['field', 'value'], rows: fieldRows(value, '') };
  }
  if (value.kind === 'list' && value.schedule) {
    return scheduleTable(value.items, value.schedule, most);
  }
  if (value.kind !== 'list' || value.items.length === 0 || !value.items.every((item) => item.kind === 'record')) {
    return undefined;
  }
  const head = [...new Set(value.items.flatMap((item) => [...item.fields.keys()]))];
  const rows = value.items.map((item) =>
    head.map((field) => {
      const cell = item.fields.get(field);
      return cell ? showValue(cell) : '';
    }),
  );
  return { kind: 'table', head, rows };
}

/** Records inside a record are laid flat: `motor.ocpd`. */
const fieldRows = (record: Value & { kind: 'record' }, prefix: string): string[][] =>
  [...record.fields].flatMap(([field, value]) =>
    value.kind === 'record' ? fieldRows(value, `${prefix}${field}.`) : [[prefix + field, showValue(value)]],
  );
