import { children, Node, nodesBelow, type SyntaxTree } from '../language';

/** Name nodes that stand for a value: not fields, not argument names, not what is called. */
export function* valueNames(tree: SyntaxTree, expression: number): Generator<number> {
  const skipped = new Set<number>();
  for (const node of nodesBelow(tree, expression)) {
    const [first, second] = children(tree, node);
    switch (tree.kinds[node]) {
      case Node.Member:
        skipped.add(second);
        break;
      case Node.Argument:
      case Node.Field:
        if (second !== undefined) {
          skipped.add(first);
        }
        break;
      case Node.Call:
        skipped.add(first);
        break;
      case Node.Name:
        if (!skipped.has(node)) {
          yield node;
        }
    }
  }
}
