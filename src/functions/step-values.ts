import type { Value } from '../language';
import { parseUnit, toBase } from '../units';
import { type Conductor, conductorType } from './conductor';

/** A quantity as a step shows it; `unit` is one of our own literals, so it parses. */
export function quantityValue(value: number, unit: string): Value {
  const parsed = parseUnit(unit);
  if ('problem' in parsed) {
    throw new Error(`${unit} is not a unit: ${parsed.problem}`);
  }
  return { kind: 'quantity', base: toBase(value, parsed), type: parsed.type, unit: parsed, unitIsDerived: false };
}

export const amperes = (value: number): Value => quantityValue(value, 'A');

export const conductorValue = (value: Conductor): Value => ({ kind: 'object', object: conductorType, value });
