import { children, Node, type SyntaxTree } from '../syntax/tree';

/** The nodes whose text a statement defines as a name. */
export function definedNodes(tree: SyntaxTree, node: number): number[] {
  const first = tree.firstChildren[node];
  switch (tree.kinds[node]) {
    case Node.Definition:
    case Node.FunctionDefinition:
    case Node.BlockCall:
    case Node.Schedule:
    case Node.Input:
      return first >= 0 && tree.kinds[first] === Node.Name ? [first] : [];
    case Node.Solve:
      return [...children(tree, node)]
        .filter((child) => tree.kinds[child] === Node.Unknown)
        .map((child) => tree.firstChildren[child]);
    case Node.Unknown:
      return [first];
    case Node.Use:
      return [...children(tree, node)].filter((child) => tree.kinds[child] === Node.Name);
    default:
      return [];
  }
}
