import { children, Node, type SyntaxTree } from '../language';
import { type Dimension, dimensionOf, parseUnit, toBase, type Unit } from '../units';
import { ungrouped } from './argument-places';

export const voltDimension = dimensionOf({ mass: 1, length: 2, time: -3, current: -1 });
export const ampereDimension = dimensionOf({ current: 1 });
export const wattDimension = dimensionOf({ mass: 1, length: 2, time: -3 });

/** The quantity that somebody wrote down, with or without a meter or limits; absent for anything worked out. */
export function writtenNode(tree: SyntaxTree, node: number): number | undefined {
  let inner = ungrouped(tree, node);
  while (tree.kinds[inner] === Node.Reading || tree.kinds[inner] === Node.PlusMinus) {
    inner = ungrouped(tree, [...children(tree, inner)][0]);
  }
  return tree.kinds[inner] === Node.Quantity ? inner : undefined;
}

/** A written quantity's number in the coherent SI unit and its dimension. */
export function writtenBase(
  tree: SyntaxTree,
  node: number,
): { readonly base: number; readonly dimension: Dimension; readonly unit: Unit } | undefined {
  const unit = unitOf(tree.unitTexts[tree.units[node]] ?? '');
  return unit && { base: toBase(tree.numbers[node], unit), dimension: unit.type.dimension, unit };
}

const known = new Map<string, Unit | undefined>();

/** A sheet has few units, and writes each many times. */
function unitOf(text: string): Unit | undefined {
  if (!known.has(text)) {
    const unit = parseUnit(text);
    known.set(text, 'problem' in unit ? undefined : unit);
  }
  return known.get(text);
}
