import { children, Node, type SyntaxTree } from '../syntax/tree';

/** The nodes whose text a statement defines as a name; several for `solve` and `use`. */
export function definedNodes(tree: SyntaxTree, node: number): number[] {
  switch (tree.kinds[node]) {
    case Node.Solve:
      return [...children(tree, node)]
        .filter((child) => tree.kinds[child] === Node.Unknown)
        .map((child) => tree.firstChildren[child]);
    case Node.Use:
      return [...children(tree, node)].filter((child) => tree.kinds[child] === Node.Name);
    default: {
      const only = onlyDefined(tree, node);
      return only < 0 ? [] : [only];
    }
  }
}

/** The first of them; -1 where there is none. */
export function firstDefined(tree: SyntaxTree, node: number): number {
  const kind = tree.kinds[node] as Node;
  return kind === Node.Solve || kind === Node.Use ? (definedNodes(tree, node)[0] ?? -1) : onlyDefined(tree, node);
}

function onlyDefined(tree: SyntaxTree, node: number): number {
  const first = tree.firstChildren[node];
  switch (tree.kinds[node]) {
    case Node.Definition:
    case Node.FunctionDefinition:
    case Node.BlockCall:
    case Node.Schedule:
    case Node.Input:
      return first >= 0 && tree.kinds[first] === Node.Name ? first : -1;
    case Node.Unknown:
      return first;
    default:
      return -1;
  }
}
