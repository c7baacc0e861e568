import {
  type CallRecord,
  children,
  Node,
  Operator,
  type Program,
  type StatementResult,
  type SyntaxTree,
  spanOf,
  statementOf,
  textOf,
} from '../language';
import type { Span } from '../text';
import { type Dimension, dimensionOf } from '../units';
import { calledName, ungrouped } from './argument-places';
import type { LintedStatement } from './contract';
import { remarkOn } from './remarks';
import { writtenBase } from './written-values';

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

/** What a name is defined as: its expression, and the index of the defining statement in its cell. */
export function definitionOf(place: Place): (Place & { readonly statement: number }) | undefined {
  const { program, tree, node } = place;
  const info = program.name(textOf(tree, node));
  const definingTree = info && program.tree(info.cell);
  const statement = definingTree?.statements[info!.statement];
  if (!info || !definingTree || statement === undefined || definingTree.kinds[statement] !== Node.Definition) {
    return undefined;
  }
  const expression = [...children(definingTree, statement)][1];
  return expression === undefined
    ? undefined
    : { program, cell: info.cell, tree: definingTree, node: expression, statement: info.statement };
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
export const longestChain = 20;

/** What is written as a quantity in a unit of this dimension, with its number; absent for everything else. */
export function writtenQuantity(place: Place, dimension: Dimension): { value: number; unit: string } | undefined {
  const { tree, node } = place;
  const written = tree.kinds[node] === Node.Quantity ? writtenBase(tree, node) : undefined;
  return written?.dimension === dimension ? { value: tree.numbers[node], unit: written.unit.symbol } : undefined;
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
    remarks.push(remarkOn(definition.tree, definition.statement));
    current = { ...definition, node: ungrouped(definition.tree, definition.node) };
  }
  return remarks;
}

/** The library call that an expression is or that a name stands for, and whether it stands in the statement itself. */
export function callBehind(
  statement: LintedStatement,
  start: Place,
): { readonly call: CallRecord; readonly here: boolean } | undefined {
  const place = resolved(start);
  const span = spanOf(place.tree, place.node);
  const own = statement.calls.find((call) => call.cell === place.cell && sameSpan(call.span, span));
  if (own) {
    return { call: own, here: true };
  }
  const { kinds } = place.tree;
  if (kinds[place.node] !== Node.Call || (place.tree === statement.tree && isWithin(span, statement.result.span))) {
    return undefined;
  }
  const owner = resultAt(place.program.results(place.cell), statementOf(place.tree, place.node));
  const call = owner?.calls().find((candidate) => sameSpan(candidate.span, span));
  return call && { call, here: false };
}

const sameSpan = (a: Span, b: Span): boolean => a.start === b.start && a.end === b.end;

const isWithin = (inner: Span, outer: Span): boolean => outer.start <= inner.start && inner.end <= outer.end;

/** The result of the statement with an index; results lie in order, and a statement that defines nothing may have none. */
function resultAt(results: readonly StatementResult[], index: number): StatementResult | undefined {
  let low = 0;
  let high = results.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (results[middle].index < index) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return results[low]?.index === index ? results[low] : undefined;
}
