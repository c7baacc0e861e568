import { showNumber } from '../../display';
import { fromBase, type Unit, unitFor, unitWords } from '../../units';
import { escaped, table } from '../markdown';

/** What a unit is worth, in the units of either system. */
export function unitPage(unit: Unit): string {
  const word = unitWords.get(unit.symbol);
  const title = `**${escaped(unit.symbol)}**${word && word.powerOfTen === 0 ? ` · ${word.unit.name}` : ''}`;
  if (unit.offset !== 0) {
    return `${title}\n\nA temperature on a scale. Two of them differ by a difference; they do not add.`;
  }
  const base = unit.factor;
  const others = (['SI', 'US'] as const)
    .map((system) => unitFor(unit.type, system))
    .filter((other, i, all) => other.symbol !== unit.symbol && all.findIndex((o) => o.symbol === other.symbol) === i);
  if (others.length === 0) {
    return title;
  }
  const rows = others.map((other) => [
    `1 ${escaped(unit.symbol)}`,
    `${showNumber(fromBase(base, other))} ${escaped(other.symbol)}`,
  ]);
  return `${title}\n\n${table(['', 'is'], rows)}`;
}
