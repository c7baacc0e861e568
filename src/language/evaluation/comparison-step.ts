import { differenceOn } from '../checking/arithmetic';
import type { Type } from '../checking/type';
import type { QuantityOf } from '../checking/types';
import { Node, type SyntaxTree } from '../syntax/tree';
import { combine } from './gradient-sum';
import { comparisonSigns, mathsOf, substitutedOf } from './maths-tree';
import { nearness } from './operations';
import { quantityValue, uncertainQuantity } from './read-value';
import type { Replay } from './replay';
import type { ComparisonStep, DoubtfulComparison } from './trace';
import type { QuantityValue, Value } from './value';

/** What a check compares, and how it came out. */
export function comparisonStep(run: Replay, node: number, result: Value): ComparisonStep {
  const sides = sidesOf(run, node);
  const doubtful = sides && doubtfulOf(run, sides);
  return {
    kind: 'comparison',
    formula: mathsOf(run, node),
    substituted: substitutedOf(run, node),
    result,
    margin: sides && marginOf(sides),
    ...(doubtful && { doubtful }),
  };
}

interface Sides {
  readonly operator: DoubtfulComparison['operator'];
  readonly left: QuantityValue;
  readonly right: QuantityValue;
  readonly nodes: readonly [left: number, right: number];
  /** Of their difference; absent where a side is over range. */
  readonly difference?: QuantityOf;
}

/** The two quantities that an expression compares; undefined where it is something else. */
function sidesOf(run: Replay, node: number): Sides | undefined {
  const { tree, types } = run.frame.meaning;
  const comparison = ungroup(tree, node);
  const operator = comparisonSigns[tree.operators[comparison] as keyof typeof comparisonSigns];
  const left = tree.firstChildren[comparison];
  const right = left < 0 ? -1 : tree.nextSiblings[left];
  if (tree.kinds[comparison] !== Node.Binary || !operator) {
    return undefined;
  }
  const [a, b] = [run.value(left), run.value(right)];
  if (a?.kind !== 'quantity' || b?.kind !== 'quantity') {
    return undefined;
  }
  const type: Type = types[left];
  const difference =
    type.kind !== 'quantity' || types[right].kind !== 'quantity'
      ? undefined
      : type.quantity.kind === 'absolute'
        ? differenceOn(type)
        : type;
  return { operator, left: a, right: b, nodes: [left, right], ...(difference && { difference }) };
}

/** How far a comparison is from turning: positive when it passes. Of a reading over range it is not known. */
function marginOf({ operator, left: a, right: b, difference }: Sides): Value | undefined {
  if (!difference || operator === '==' || operator === '!=') {
    return undefined;
  }
  const margin = operator === '<' || operator === '<=' ? b.base - a.base : a.base - b.base;
  // What the comparison takes for equal has nothing to spare.
  const isNothing = Math.abs(margin) <= nearness * Math.max(Math.abs(a.base), Math.abs(b.base));
  return quantityValue(difference, isNothing ? 0 : margin);
}

function doubtfulOf({ machine, frame }: Replay, sides: Sides): DoubtfulComparison | undefined {
  const { operator, left, right, nodes, difference } = sides;
  if (!left.uncertainty && !right.uncertainty) {
    return undefined;
  }
  const [a, b] = nodes.map((node) => machine.uncertain.gradient(frame.slots!.get(node)!));
  const between = difference && uncertainQuantity(difference, right.base - left.base, combine(b, 1, a, -1));
  return { operator, left, right, ...(between && { difference: between }) };
}

function ungroup(tree: SyntaxTree, node: number): number {
  return tree.kinds[node] === Node.Group ? ungroup(tree, tree.firstChildren[node]) : node;
}
