import type { Type } from '../checking/type';
import { listOf } from '../checking/types';

/** How many slots a value of this type takes: one for each field of a record or column of a schedule, one for anything else. */
export function sizeOf(type: Type): number {
  if (type.kind === 'schedule') {
    return type.columns.size;
  }
  if (type.kind !== 'record') {
    return 1;
  }
  let size = 0;
  for (const field of type.fields.values()) {
    size += sizeOf(field);
  }
  return size;
}

/** The type of each slot that a value of this type takes. */
export const slotTypes = (type: Type): readonly Type[] =>
  type.kind === 'record'
    ? [...type.fields.values()].flatMap(slotTypes)
    : type.kind === 'schedule'
      ? [...type.columns.values()].map(listOf)
      : [type];

/** Where a field or column lies, counted from the first slot of what has it. */
export function offsetOf(type: Type & { kind: 'record' | 'schedule' }, wanted: string): number {
  if (type.kind === 'schedule') {
    return [...type.columns.keys()].indexOf(wanted);
  }
  let offset = 0;
  for (const [name, field] of type.fields) {
    if (name === wanted) {
      break;
    }
    offset += sizeOf(field);
  }
  return offset;
}
