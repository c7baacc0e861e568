import { children, type SyntaxTree } from '../language';

/** The nodes that hold or touch an offset, innermost first. At a seam between two, the one that begins there counts. */
export function pathAt(tree: SyntaxTree, offset: number): readonly number[] {
  const path: number[] = [];
  let candidates: Iterable<number> = tree.statements;
  for (;;) {
    let found = -1;
    for (const node of candidates) {
      if (tree.starts[node] <= offset && offset <= tree.ends[node]) {
        found = node;
      }
    }
    if (found < 0) {
      return path.reverse();
    }
    path.push(found);
    candidates = children(tree, found);
  }
}
