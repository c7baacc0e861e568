import type { Statement } from '../checking/binding';
import { measured } from '../measurement';
import type { ValueOrigin } from '../program';
import { Node, Operator, type SyntaxTree } from '../syntax/tree';

/** Where a statement's value comes from, by its form. */
export function originOf({ cell: { tree, meaning }, node, part, expression }: Statement): ValueOrigin {
  if (part >= 0) {
    return 'taken';
  }
  if (tree.kinds[node] === Node.Input) {
    return 'input';
  }
  const inner = ungrouped(tree, expression);
  const call = meaning.calls.get(inner);
  if (call?.kind === 'library' && call.definition === measured) {
    return 'measured';
  }
  return byKind(tree, inner);
}

function byKind(tree: SyntaxTree, expression: number): ValueOrigin {
  switch (expression < 0 ? undefined : (tree.kinds[expression] as Node)) {
    case Node.Reading:
    case Node.PlusMinus:
    case Node.OverRange:
      return 'measured';
    case Node.Number:
    case Node.Quantity:
    case Node.Designation:
    case Node.Text:
    case Node.Yes:
    case Node.No:
      return 'given';
    case Node.Unary:
      return tree.operators[expression] === Operator.Negate
        ? byKind(tree, ungrouped(tree, tree.firstChildren[expression]))
        : 'computed';
    default:
      return 'computed';
  }
}

/** What stands in parentheses, or is shown in another unit. */
function ungrouped(tree: SyntaxTree, expression: number): number {
  let inner = expression;
  while (inner >= 0 && (tree.kinds[inner] === Node.Group || tree.kinds[inner] === Node.Convert)) {
    inner = tree.firstChildren[inner];
  }
  return inner;
}
