import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';

/** The two sides of an Equation node. */
export interface Sides {
  readonly node: number;
  readonly left: number;
  readonly right: number;
}

/** The two ends of a Range node. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

interface SolutionParts {
  readonly name: string;
  readonly formulas: readonly number[];
  readonly equation: Sides;
  readonly bounds?: Bounds;
}

export interface UnknownParts {
  readonly node: number;
  readonly name: string;
  readonly bounds?: Bounds;
}

/** What stands where in a Solution node. */
export function solutionParts(tree: SyntaxTree, node: number): SolutionParts {
  const [name, list, equation, range] = children(tree, node);
  return {
    name: textOf(tree, name),
    formulas: [...children(tree, list)],
    equation: sidesOf(tree, equation),
    ...(range !== undefined && { bounds: boundsOf(tree, range) }),
  };
}

/** What stands where in a Together node, the unknown that is wanted first. */
export function togetherParts(tree: SyntaxTree, node: number) {
  const [, ...below] = children(tree, node);
  return { unknowns: unknownsIn(tree, below), equations: equationsIn(tree, below) };
}

/** What stands where in a Solve node as written. */
export function solveParts(tree: SyntaxTree, node: number) {
  const below = [...children(tree, node)];
  return { unknowns: unknownsIn(tree, below), equations: equationsIn(tree, below) };
}

/** The names that a Solution or Together node stands for itself, and nodes of names that must have a value before it. */
export function namesInSolution(tree: SyntaxTree, node: number) {
  const first = tree.firstChildren[node];
  if (tree.kinds[node] === Node.Solution) {
    return { needs: [], own: new Set([textOf(tree, first)]) };
  }
  const { unknowns } = togetherParts(tree, node);
  // Should there be no solution, it is said at the first unknown; the others then lack that one's value.
  return {
    needs: unknowns[0].name === textOf(tree, first) ? [] : [first],
    own: new Set(unknowns.map(({ name }) => name)),
  };
}

const unknownsIn = (tree: SyntaxTree, nodes: readonly number[]): UnknownParts[] =>
  nodes
    .filter((node) => tree.kinds[node] === Node.Unknown)
    .map((node) => {
      const name = tree.firstChildren[node];
      const range = tree.nextSiblings[name];
      return {
        node,
        name: textOf(tree, name),
        ...(range >= 0 && tree.kinds[range] === Node.Range && { bounds: boundsOf(tree, range) }),
      };
    });

const equationsIn = (tree: SyntaxTree, nodes: readonly number[]): Sides[] =>
  nodes.filter((node) => tree.kinds[node] === Node.Equation).map((node) => sidesOf(tree, node));

function sidesOf(tree: SyntaxTree, node: number): Sides {
  const left = tree.firstChildren[node];
  return { node, left, right: tree.nextSiblings[left] };
}

function boundsOf(tree: SyntaxTree, range: number): Bounds {
  const low = tree.firstChildren[range];
  return { low, high: tree.nextSiblings[low] };
}
