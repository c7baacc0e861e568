import { children, type SyntaxTree } from './tree';

/** A node with the nodes that hold it, outermost first. */
export interface NodePath {
  readonly node: number;
  readonly parents: readonly number[];
}

/**
 * The innermost node that holds `offset` or touches it, as a text cursor does. Where two nodes touch, the one that
 * begins there wins, except over white space and signs. Undefined outside every statement.
 */
export function nodeAt(tree: SyntaxTree, offset: number): NodePath | undefined {
  const parents: number[] = [];
  let node = touching(tree, tree.statements, offset);
  if (node < 0) {
    return undefined;
  }
  for (;;) {
    const inner = touching(tree, children(tree, node), offset);
    if (inner < 0) {
      return { node, parents };
    }
    parents.push(node);
    node = inner;
  }
}

function touching(tree: SyntaxTree, nodes: Iterable<number>, offset: number): number {
  let found = -1;
  for (const node of nodes) {
    if (tree.starts[node] > offset) {
      break;
    }
    if (tree.ends[node] >= offset) {
      found = node;
    }
  }
  return found;
}

/** The index in `statements` of the statement that holds `node`. Statements lie in order and do not overlap. */
export function statementOf(tree: SyntaxTree, node: number): number {
  const { statements, starts } = tree;
  let low = 0;
  let high = statements.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[statements[middle]] <= starts[node]) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

/** Every node below and including `node`, parents before their children, in the order of the text. */
export function* nodesBelow(tree: SyntaxTree, node: number): Generator<number> {
  yield node;
  for (const child of children(tree, node)) {
    yield* nodesBelow(tree, child);
  }
}

/** True when part of this statement could not be read, so that its meaning is a guess: an error of the syntax lies in it. */
export function isBroken(tree: SyntaxTree, statement: number): boolean {
  const start = tree.starts[statement];
  const end = tree.ends[statement];
  return tree.diagnostics.some(({ severity, span }) => severity === 'error' && span.start <= end && span.end >= start);
}

/** What a Text node says, without its quotation marks. */
export function textContent(tree: SyntaxTree, node: number): string {
  const written = tree.text.slice(tree.starts[node], tree.ends[node]);
  return written.replace(/^["“”„]/, '').replace(/["“”]$/, '');
}
