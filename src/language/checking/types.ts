import { parseUnit, type QuantityType, type Unit } from '../../units';
import type { Type } from './type';

export type QuantityOf = Extract<Type, { kind: 'quantity' }>;
export type RecordOf = Extract<Type, { kind: 'record' }>;

/** Types without parts, and quantities and lists made here, are one object each, so that tables can be keyed by them. */
export const unknownType: Type = { kind: 'unknown' };
export const booleanType: Type = { kind: 'boolean' };
export const textType: Type = { kind: 'text' };
export const meterType: Type = { kind: 'meter' };

const quantities = new Map<Unit, QuantityOf[]>();
const lists = new Map<Type, Type>();

/** A quantity shown in `unit`, which nobody wrote when `unitIsDerived`. */
export function quantityOf(quantity: QuantityType, unit: Unit, unitIsDerived = false): QuantityOf {
  let made = quantities.get(unit);
  if (!made) {
    made = [];
    quantities.set(unit, made);
  }
  for (const type of made) {
    if (type.quantity === quantity && (type.unitIsDerived === true) === unitIsDerived) {
      return type;
    }
  }
  const type: QuantityOf = { kind: 'quantity', quantity, unit, unitIsDerived: unitIsDerived || undefined };
  made.push(type);
  return type;
}

/** A quantity in the unit that its author wrote. */
export const writtenIn = (unit: Unit): QuantityOf => quantityOf(unit.type, unit);

export function listOf(element: Type): Type {
  let type = lists.get(element);
  if (!type) {
    type = { kind: 'list', element };
    lists.set(element, type);
  }
  return type;
}

/** A unit named in the program's own code, never by a user. */
export function ownUnit(text: string): Unit {
  const unit = parseUnit(text);
  if ('problem' in unit) {
    throw new Error(`The unit ${text} is not in the unit table: ${unit.problem}`);
  }
  return unit;
}

let plain: QuantityOf | undefined;

/** A number without unit. */
export function plainNumberType(): QuantityOf {
  plain ??= writtenIn(ownUnit(''));
  return plain;
}
