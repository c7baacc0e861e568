import { children, Node, Operator, type SyntaxTree, textOf } from '../../../src/language/syntax/tree';

/** A tree as indented lines, for tests: the kind of each node, its operator, number and unit, and a leaf's text. */
export function printTree(tree: SyntaxTree): string {
  const lines: string[] = [];
  const print = (node: number, depth: number) => {
    lines.push('  '.repeat(depth) + describeNode(tree, node));
    for (const child of children(tree, node)) {
      print(child, depth + 1);
    }
  };
  for (const statement of tree.statements) {
    print(statement, 0);
  }
  return lines.join('\n');
}

function describeNode(tree: SyntaxTree, node: number): string {
  const kind: Node = tree.kinds[node];
  const unit = tree.units[node] >= 0 ? ` [${tree.unitTexts[tree.units[node]]}]` : '';
  switch (kind) {
    case Node.Binary:
    case Node.Unary:
      return `${Node[kind]} ${Operator[tree.operators[node]]}`;
    case Node.Number:
    case Node.Quantity:
      return `${Node[kind]} ${tree.numbers[node]}${unit} decimals ${tree.decimals[node]}`;
    case Node.Size:
      // White space inside a size is no part of its meaning.
      return `Size ${textOf(tree, node).replace(/\s/g, '')}${unit}`;
    case Node.Convert:
      return `Convert${unit}`;
    case Node.List:
    case Node.Parameters:
      return Node[kind];
    default:
      return tree.firstChildren[node] < 0 ? `${Node[kind]} ${textOf(tree, node)}`.trim() : Node[kind];
  }
}
