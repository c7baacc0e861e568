import { children, Node, Operator, type Program, type StatementResult, type SyntaxTree, textOf } from '../language';
import { type Dimension, dimensionOf, parseUnit } from '../units';
import { calledName, ungrouped } from './argument-places';

/** An expression with the cell that it stands in. */
export interface Place {
  readonly program: Program;
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly node: number;
}

/** Ω is kg·m²·s⁻³·A⁻². */
export const ohmDimension: Dimension = dimensionOf({ mass: 1, length: 2, time: -3, current: -2 });
export const ohmPerLengthDimension: Dimension = dimensionOf({ mass: 1, length: 1, time: -3, current: -2 });

/** What a name is defined as: its expression and what the defining statement came to. */
export function definitionOf(place: Place): (Place & { readonly result: StatementResult | undefined }) | undefined {
  const { program, tree, node } = place;
  const info = program.names().get(textOf(tree, node));
  const definingTree = info && program.tree(info.cell);
  const statement = definingTree?.statements[info!.statement];
  if (!info || !definingTree || statement === undefined || definingTree.kinds[statement] !== Node.Definition) {
    return undefined;
  }
  const expression = [...children(definingTree, statement)][1];
  const result = program.results(info.cell).find((candidate) => candidate.index === info.statement);
  return expression === undefined
    ? undefined
    : { program, cell: info.cell, tree: definingTree, node: expression, result };
}

/** The expression that a name stands for, through any number of names; the place itself for everything else. */
export function resolved(place: Place): Place {
  let current = { ...place, node: ungrouped(place.tree, place.node) };
  for (let steps = 0; steps < longestChain && current.tree.kinds[current.node] === Node.Name; steps++) {
    const definition = definitionOf(current);
    if (!definition) {
      break;
    }
    current = { ...definition, node: ungrouped(definition.tree, definition.node) };
  }
  return current;
}

/** Names that stand for names end well before this; a cycle is the checker's to report. */
const longestChain = 20;

/** What is written as a quantity in a unit of this dimension, with its number; absent for everything else. */
export function writtenQuantity(place: Place, dimension: Dimension): { value: number; unit: string } | undefined {
  const { tree, node } = place;
  if (tree.kinds[node] !== Node.Quantity) {
    return undefined;
  }
  const text = tree.unitTexts[tree.units[node]] ?? '';
  const unit = parseUnit(text);
  return !('problem' in unit) && unit.type.dimension === dimension
    ? { value: tree.numbers[node], unit: unit.symbol }
    : undefined;
}

/**
 * True when the expression is a resistance that somebody read from a meter, possibly with something subtracted or
 * halved; false for one worked out from other quantities, such as volts over amperes.
 */
export function isOhmReading(place: Place, depth = longestChain): boolean {
  const { tree, node, ...rest } = resolved(place);
  const at = (child: number): Place => ({ ...rest, tree, node: child });
  if (depth === 0) {
    return false;
  }
  switch (tree.kinds[node]) {
    case Node.Quantity:
      return writtenQuantity(at(node), ohmDimension) !== undefined;
    case Node.Reading:
    case Node.PlusMinus:
    case Node.Convert:
      return tree.firstChildren[node] >= 0 && isOhmReading(at(tree.firstChildren[node]), depth - 1);
    case Node.Call: {
      const [, argument] = [...children(tree, node)];
      return (
        calledName(tree, node) === 'measured' &&
        argument !== undefined &&
        isOhmReading(at([...children(tree, argument)].at(-1)!), depth - 1)
      );
    }
    case Node.Binary: {
      const [left, right] = [...children(tree, node)];
      const scales = tree.operators[node] === Operator.Multiply || tree.operators[node] === Operator.Divide;
      const combines = tree.operators[node] === Operator.Add || tree.operators[node] === Operator.Subtract;
      return (combines || (scales && tree.kinds[right] === Node.Number)) && isOhmReading(at(left), depth - 1);
    }
    default:
      return false;
  }
}

/** True when something is subtracted on the way to the expression: leads, for one. */
export function subtracts(place: Place, depth = longestChain): boolean {
  const { tree, node, ...rest } = resolved(place);
  if (depth === 0 || tree.kinds[node] === Node.Quantity) {
    return false;
  }
  return (
    (tree.kinds[node] === Node.Binary && tree.operators[node] === Operator.Subtract) ||
    (tree.firstChildren[node] >= 0 && subtracts({ ...rest, tree, node: tree.firstChildren[node] }, depth - 1))
  );
}

/** The remarks beside the definitions that the expression goes back to. */
export function remarksBehind(place: Place): string[] {
  const remarks: string[] = [];
  let current = { ...place, node: ungrouped(place.tree, place.node) };
  for (let steps = 0; steps < longestChain && current.tree.kinds[current.node] === Node.Name; steps++) {
    const definition = definitionOf(current);
    if (!definition) {
      break;
    }
    if (definition.result?.remark) {
      remarks.push(definition.result.remark);
    }
    current = { ...definition, node: ungrouped(definition.tree, definition.node) };
  }
  return remarks;
}
