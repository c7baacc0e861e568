import { children, Node, type SyntaxTree, textOf } from '../language';

const usesOf = new WeakMap<SyntaxTree, ReadonlyMap<string, number>>();

/**
 * How often each name is used in a cell. A name counts wherever it stands and is not defined, labelled or taken from a
 * record, so that one too many is counted rather than one too few.
 */
export function usesIn(tree: SyntaxTree): ReadonlyMap<string, number> {
  let uses = usesOf.get(tree);
  if (!uses) {
    uses = countIn(tree);
    usesOf.set(tree, uses);
  }
  return uses;
}

/** Kinds whose first child is a name that is given to something and not used. */
const namesFirst: ReadonlySet<Node> = new Set([
  Node.Definition,
  Node.FunctionDefinition,
  Node.BlockCall,
  Node.Schedule,
  Node.Column,
  Node.Input,
  Node.Field,
  Node.Allow,
]);

function countIn(tree: SyntaxTree): Map<string, number> {
  const counts = new Map<string, number>();
  const visit = (node: number): void => {
    if (tree.kinds[node] === Node.Name) {
      const name = textOf(tree, node);
      counts.set(name, (counts.get(name) ?? 0) + 1);
      return;
    }
    const kind: Node = tree.kinds[node];
    const parts = [...children(tree, node)];
    const label =
      namesFirst.has(kind) || (kind === Node.Argument && parts.length > 1) ? 0 : kind === Node.Member ? 1 : -1;
    for (const [i, part] of parts.entries()) {
      if (i !== label || tree.kinds[part] !== Node.Name) {
        visit(part);
      }
    }
  };
  tree.statements.forEach(visit);
  return counts;
}
