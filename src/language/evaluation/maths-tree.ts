import { argumentNodes } from '../checking/arguments';
import { textContent } from '../syntax/navigation';
import { children, Node, Operator, textOf, unitSpanOf } from '../syntax/tree';
import type { Replay } from './replay';
import type { Maths } from './trace';

/** The operators that compare, as they are written. */
export const comparisonSigns = {
  [Operator.Equal]: '==',
  [Operator.NotEqual]: '!=',
  [Operator.Less]: '<',
  [Operator.LessOrEqual]: '<=',
  [Operator.Greater]: '>',
  [Operator.GreaterOrEqual]: '>=',
} as const;

const binaries = {
  ...comparisonSigns,
  [Operator.Add]: '+',
  [Operator.Subtract]: '-',
  [Operator.Multiply]: '*',
  [Operator.Divide]: '/',
  [Operator.Power]: '^',
  [Operator.And]: 'and',
  [Operator.Or]: 'or',
} as const;

/** Leaves of a formula: how a name or a member is shown. */
export type LeafReader = (node: number, written: string) => Maths;

/** The expression with its names, as written. Parentheses and conversions leave no trace: the tree says it all. */
export const mathsOf = (run: Replay, node: number): Maths => build(run, node, (_, name) => ({ kind: 'name', name }));

/** The same shape with the value of each name in its place; undefined when nothing would change. */
export function substitutedOf(run: Replay, node: number): Maths | undefined {
  let changed = false;
  const maths = build(run, node, (leaf, name) => {
    const value = run.value(leaf);
    changed ||= value !== undefined;
    return value ? { kind: 'value', value } : { kind: 'name', name };
  });
  return changed ? maths : undefined;
}

export function build(run: Replay, node: number, leaf: LeafReader): Maths {
  const { tree } = run.frame.meaning;
  const { kinds, firstChildren, nextSiblings } = tree;
  const first = firstChildren[node];
  const inner = (child: number) => build(run, child, leaf);
  switch (kinds[node] as Node) {
    case Node.Number:
      return { kind: 'literal', number: textOf(tree, node) };
    case Node.Quantity:
      return quantity(run, node);
    case Node.Name:
    case Node.Member:
      return leaf(node, textOf(tree, node));
    case Node.Group:
    case Node.Convert:
      return inner(first);
    case Node.Binary:
      return {
        kind: 'binary',
        operator: binaries[tree.operators[node] as keyof typeof binaries],
        left: inner(first),
        right: inner(nextSiblings[first]),
      };
    case Node.Where: {
      // With numbers in place of names, what was picked says more than all items and the answers for each.
      const picked = leaf(node, '');
      return picked.kind === 'value'
        ? picked
        : { kind: 'binary', operator: 'where', left: inner(first), right: inner(nextSiblings[first]) };
    }
    case Node.Unary: {
      const operator = tree.operators[node] as Operator;
      return {
        kind: 'unary',
        operator: operator === Operator.Not ? 'not' : operator === Operator.Plus ? '+' : '-',
        operand: inner(first),
      };
    }
    case Node.If: {
      const [condition, then, otherwise] = [...children(tree, node)].map(inner);
      return { kind: 'if', condition, then, otherwise };
    }
    case Node.List:
      return { kind: 'list', items: [...children(tree, node)].map(inner) };
    case Node.Call:
    case Node.BlockCall: {
      const { callee, items } = argumentNodes(tree, node);
      return {
        kind: 'call',
        name: textOf(tree, callee),
        arguments: items.map(({ name, expression }) => ({
          ...(name >= 0 && { name: textOf(tree, name) }),
          value: inner(expression),
        })),
      };
    }
    case Node.PlusMinus:
      return { kind: 'plus-minus', value: inner(first), limits: inner(nextSiblings[first]) };
    case Node.Text:
      return { kind: 'text', text: textContent(tree, node) };
    default: {
      // Sizes with their words, yes and no: their values say them best.
      const value = run.value(node);
      return value ? { kind: 'value', value } : { kind: 'name', name: textOf(tree, node) };
    }
  }
}

/** A quantity as its author wrote the number, with the unit in its canonical spelling. */
function quantity(run: Replay, node: number): Maths {
  const { tree } = run.frame.meaning;
  const number = tree.text.slice(tree.starts[node], unitSpanOf(tree, node).start).trim();
  const unit = run.frame.meaning.unitAt(node);
  return { kind: 'literal', number, unit: 'problem' in unit ? textOf(tree, node) : unit.symbol };
}
