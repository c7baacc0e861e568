import type { Type } from '../checking/type';
import { ownUnit, plainNumberType, type QuantityOf, writtenIn } from '../checking/types';
import { Absent } from '../library';
import type { Meter } from '../measurement';
import { uncertaintyOf } from './coverage';
import type { Gradient } from './gradient';
import { sizeOf } from './layout';
import { type Machine, NoValue } from './machine';
import { readSchedule } from './schedules/read-schedule';
import type { QuantityValue, Value } from './value';

/** True when the slots hold a value of this type. A record has one even where single fields are absent. */
export function hasValue(machine: Machine, type: Type, slot: number): boolean {
  switch (type.kind) {
    case 'quantity':
    case 'bound':
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
      return uncertainQuantity(type, machine.numbers[slot], machine.uncertain.gradient(slot));
    case 'bound':
      return overRange(type.end, machine.numbers[slot]);
    case 'boolean': {
      const answer = machine.numbers[slot];
      const doubt = machine.uncertain.doubt(slot);
      return { kind: 'boolean', value: answer === 0.5 ? 'cannot tell' : answer === 1, ...(doubt && { doubt }) };
    }
    case 'list':
      return { kind: 'list', items: readItems(machine, type.element, slot) };
    case 'schedule':
      return readSchedule(machine, type, slot, (element, at) => readItems(machine, element, at));
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

/** The items of a list, with what is not certain about them; one without a value says why. */
function readItems(machine: Machine, element: Type, slot: number): Value[] {
  const object = machine.objects[slot];
  const gradients = machine.uncertain.items(slot);
  const doubts = machine.uncertain.itemDoubts(slot);
  const holes = machine.holes.get(object as object);
  return Array.from(object as ArrayLike<unknown>, (item, i): Value => {
    const hole = holes?.get(i);
    if (hole) {
      return { kind: 'absent', because: hole.why };
    }
    const value = withGradient(valueOfObject(element, item), gradients?.[i]);
    const doubt = doubts?.[i];
    return doubt && value.kind === 'boolean' ? { ...value, doubt } : value;
  });
}

/** More than the end of a meter's range: an interval without an upper end. */
const overRange = (type: QuantityOf, end: number): Value => ({
  ...quantityValue(type, end),
  uncertainty: {
    standard: Number.POSITIVE_INFINITY,
    low: end,
    high: Number.POSITIVE_INFINITY,
    coverageFactor: 1,
    sources: [],
  },
});

/** Less doubt than this, of the value, is what rounding leaves where doubts cancel. */
const roundingDoubt = 1e-11;

const withGradient = (value: Value, gradient: Gradient | undefined): Value =>
  value.kind === 'quantity' ? doubted(value, gradient) : value;

function doubted(value: QuantityValue, gradient: Gradient | undefined): QuantityValue {
  if (!gradient) {
    return value;
  }
  const uncertainty = uncertaintyOf(value.base, gradient);
  return uncertainty.standard <= roundingDoubt * Math.abs(value.base) ? value : { ...value, uncertainty };
}

/** A quantity with what is known of it. */
export const uncertainQuantity = (type: QuantityOf, base: number, gradient: Gradient | undefined): QuantityValue =>
  doubted(quantityValue(type, base), gradient);

export const quantityValue = (type: Type & { kind: 'quantity' }, base: number): QuantityValue => ({
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
    case 'meter':
      return { kind: 'meter', terms: termsOf(type, object as Meter) };
    default:
      return { kind: 'absent', because: 'it has no value' };
  }
}

/** The terms of a meter's accuracy that are not zero. */
function termsOf(type: Extract<Type, { kind: 'meter' }>, { reading, digits, range }: Meter): QuantityValue[] {
  return [
    ...(reading > 0 ? [quantityValue(writtenIn(ownUnit('%')), reading / 100)] : []),
    ...(digits > 0 ? [quantityValue(plainNumberType(), digits)] : []),
    ...(range > 0 ? [quantityValue(type.measures ?? plainNumberType(), range)] : []),
  ];
}
