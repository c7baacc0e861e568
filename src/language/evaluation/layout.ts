import type { Type } from '../checking/type';

/** How many slots a value of this type takes: one for each field of a record, one for anything else. */
export function sizeOf(type: Type): number {
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
  type.kind === 'record' ? [...type.fields.values()].flatMap(slotTypes) : [type];

/** Where a field lies, counted from the record's first slot. */
export function offsetOf(type: Type & { kind: 'record' }, wanted: string): number {
  let offset = 0;
  for (const [name, field] of type.fields) {
    if (name === wanted) {
      break;
    }
    offset += sizeOf(field);
  }
  return offset;
}
