import { dimensionless, type QuantityType } from '../../units';
import type { Type } from './type';
import { ownUnit } from './types';

/** What physical quantities are called in messages, each told by one of its units. */
const names: readonly (readonly [unit: string, name: string])[] = [
  ['V', 'a voltage'],
  ['A', 'a current'],
  ['Ω', 'a resistance'],
  ['S', 'a conductance'],
  ['Ω/m', 'a resistance per length'],
  ['Ω·m', 'a resistivity'],
  ['W', 'a real power'],
  ['VA', 'an apparent power'],
  ['var', 'a reactive power'],
  ['J', 'an energy'],
  ['ft', 'a length'],
  ['ft²', 'an area'],
  ['s', 'a time'],
  ['Hz', 'a frequency'],
  ['kg', 'a mass'],
  ['°C', 'a temperature'],
  ['K', 'a temperature difference'],
  ['F', 'a capacitance'],
  ['H', 'an inductance'],
  ['A·s', 'an electric charge'],
];

let byType: Map<QuantityType, string> | undefined;

function nameOf(type: QuantityType): string | undefined {
  byType ??= new Map(names.map(([unit, name]) => [ownUnit(unit).type, name]));
  return byType.get(type);
}

/** A type in words, with its article and unit: `a voltage (V)`. */
export function describe(type: Type): string {
  switch (type.kind) {
    case 'quantity': {
      const symbol = type.unit.symbol;
      if (type.quantity.dimension === dimensionless) {
        return symbol === '' ? 'a plain number' : `a number (${symbol})`;
      }
      const name = nameOf(type.quantity) ?? (nameOf(type.unit.type) === 'a real power' ? 'a power' : 'a quantity');
      return `${name} (${symbol})`;
    }
    case 'boolean':
      return 'a yes or no';
    case 'text':
      return 'a text';
    case 'choice':
      return 'a word';
    case 'object':
      return type.object.described;
    case 'record':
      return `a record (${type.name})`;
    case 'list':
      return 'a list';
    case 'schedule':
      return 'a schedule';
    case 'meter':
      return 'a meter';
    case 'bound':
      return `a reading over range (${type.end.unit.symbol})`;
    case 'unknown':
      return 'a value';
  }
}

/** `Cu or Al`; `EMT, PVC or steel` */
export const either = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
