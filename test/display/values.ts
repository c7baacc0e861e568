import assert from 'node:assert/strict';
import type { Maths, QuantityValue, Uncertainty } from '../../src/language';
import { parseUnit, toBase, type Unit } from '../../src/units';

/** Values and formulas made by hand, for tests that need no sheet. */

export function unit(symbol: string): Unit {
  const parsed = parseUnit(symbol);
  assert.ok(!('problem' in parsed), symbol);
  return parsed;
}

export const quantity = (value: number, symbol: string): QuantityValue => ({
  kind: 'quantity',
  base: toBase(value, unit(symbol)),
  type: unit(symbol).type,
  unit: unit(symbol),
  unitIsDerived: false,
});

export const derived = (value: number, symbol: string): QuantityValue => ({
  ...quantity(value, symbol),
  unitIsDerived: true,
});

export function uncertain(value: number, symbol: string, low: number, high: number): QuantityValue {
  const ends = { low: toBase(low, unit(symbol)), high: toBase(high, unit(symbol)) };
  const uncertainty: Uncertainty = { standard: 0, coverageFactor: 2, sources: [], ...ends };
  return { ...quantity(value, symbol), uncertainty };
}

type Binary = Maths & { kind: 'binary' };

export const name = (text: string): Maths => ({ kind: 'name', name: text });
export const literal = (number: string, symbol?: string): Maths => ({
  kind: 'literal',
  number,
  ...(symbol !== undefined && { unit: symbol }),
});
export const value = (amount: number, symbol: string): Maths => ({ kind: 'value', value: quantity(amount, symbol) });
export const binary = (left: Maths, operator: Binary['operator'], right: Maths): Binary => ({
  kind: 'binary',
  operator,
  left,
  right,
});
export const call = (functionName: string, ...given: Maths[]): Maths => ({
  kind: 'call',
  name: functionName,
  arguments: given.map((argument) => ({ value: argument })),
});
export const choose = (condition: Maths, then: Maths, otherwise: Maths): Maths => ({
  kind: 'if',
  condition,
  then,
  otherwise,
});
