import type { Type } from '../checking/type';
import { Absent } from '../library';
import { sizeOf } from './layout';
import { type Machine, NoValue } from './machine';
import type { Value } from './value';

/** True when the slots hold a value of this type. A record has one even where single fields are absent. */
export function hasValue(machine: Machine, type: Type, slot: number): boolean {
  switch (type.kind) {
    case 'quantity':
    case 'boolean': {
      const number = machine.numbers[slot];
      return number - number === 0;
    }
    case 'unknown':
      return false;
    default: {
      const object = machine.objects[slot];
      return !(object instanceof NoValue) && !(type.kind !== 'record' && object instanceof Absent);
    }
  }
}

/** The value in the slots; call `hasValue` first. */
export function readValue(machine: Machine, type: Type, slot: number): Value {
  const object = machine.objects[slot];
  switch (type.kind) {
    case 'quantity':
      return quantityValue(type, machine.numbers[slot]);
    case 'boolean': {
      const answer = machine.numbers[slot];
      return { kind: 'boolean', value: answer === 0.5 ? 'cannot tell' : answer === 1 };
    }
    case 'record': {
      const fields = new Map<string, Value>();
      let at = slot;
      for (const [name, field] of type.fields) {
        const absent = machine.objects[at];
        fields.set(
          name,
          absent instanceof Absent ? { kind: 'absent', because: absent.because } : readValue(machine, field, at),
        );
        at += sizeOf(field);
      }
      return { kind: 'record', name: type.name, fields };
    }
    default:
      return valueOfObject(type, object);
  }
}

export const quantityValue = (type: Type & { kind: 'quantity' }, base: number): Value => ({
  kind: 'quantity',
  base,
  type: type.quantity,
  unit: type.unit,
  unitIsDerived: type.unitIsDerived === true,
});

/** What an object slot or an item of a list holds, as a value. */
function valueOfObject(type: Type, object: unknown): Value {
  switch (type.kind) {
    case 'quantity':
      return quantityValue(type, object as number);
    case 'boolean':
      return { kind: 'boolean', value: object === 0.5 ? 'cannot tell' : object === 1 };
    case 'text':
    case 'choice':
      return { kind: type.kind, value: String(object) };
    case 'object':
      return { kind: 'object', object: type.object, value: object };
    case 'list':
      return {
        kind: 'list',
        items: Array.from(object as ArrayLike<unknown>, (item) => valueOfObject(type.element, item)),
      };
    default:
      return { kind: 'absent', because: 'it has no value' };
  }
}
