import { Node, type SyntaxTree } from '../syntax/tree';

/** The arguments of a Call or the fields of a BlockCall, which are the same thing laid out differently. */
export function argumentNodes(tree: SyntaxTree, node: number) {
  const { kinds, firstChildren, nextSiblings } = tree;
  const isBlock = kinds[node] === Node.BlockCall;
  const callee = isBlock ? nextSiblings[firstChildren[node]] : firstChildren[node];
  const items: { item: number; name: number; expression: number }[] = [];
  for (let item = nextSiblings[callee]; item >= 0; item = nextSiblings[item]) {
    if (kinds[item] !== Node.Argument && kinds[item] !== Node.Field) {
      continue; // An error that was reported already.
    }
    const first = firstChildren[item];
    const second = first < 0 ? -1 : nextSiblings[first];
    if (first >= 0) {
      items.push(second < 0 ? { item, name: -1, expression: first } : { item, name: first, expression: second });
    }
  }
  return { callee, items };
}
