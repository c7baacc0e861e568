import { Node, type SyntaxTree } from '../syntax/tree';
import type { Expression } from './expression';
import { SolutionTree } from './solution-tree';
import { type Solved, solveSystem } from './system';

/** One unknown of a solve as a statement of its own. */
export interface Solution {
  readonly name: string;
  /** A Definition with the rearranged formula; the Unknown as written where there is none. */
  readonly node: number;
  /** The equation it comes from; -1 where there is none. */
  readonly equation: number;
  /** Bounds as written, -1 for none. */
  readonly range: number;
  /** Expressions that must not be negative for the value to hold. */
  readonly notNegative: readonly number[];
  readonly assumptions: readonly string[];
  readonly report?: { readonly code: string; readonly at: number; readonly message: string };
}

export interface SolvedTree {
  readonly tree: SyntaxTree;
  /** By Solve node. */
  readonly solutions: ReadonlyMap<number, readonly Solution[]>;
}

const none: ReadonlyMap<number, readonly Solution[]> = new Map();

/** Finds the unknowns of every solve of a cell, and adds the rearranged formulas to its tree. */
export function withSolutions(tree: SyntaxTree): SolvedTree {
  const solves = tree.statements.filter((node) => tree.kinds[node] === Node.Solve);
  if (solves.length === 0) {
    return { tree, solutions: none };
  }
  const grown = new SolutionTree(tree);
  const solutions = new Map(
    solves.map((solve) => [solve, solveSystem(tree, solve).map((solved) => solutionOf(tree, grown, solved))]),
  );
  return { tree: grown.finish(), solutions };
}

function solutionOf(tree: SyntaxTree, grown: SolutionTree, solved: Solved): Solution {
  const { unknown, name } = solved;
  const range = tree.nextSiblings[tree.firstChildren[unknown]];
  const common = { name, notNegative: [], assumptions: [] };
  switch (solved.kind) {
    case 'failed':
      return { ...common, node: unknown, equation: -1, range: -1, report: solved.report };
    case 'sought': {
      const { node: equation, left, right } = solved.equation;
      const root = () => grown.root(unknown, range, left, right, equation);
      return { ...common, node: grown.definition(unknown, root, equation), equation, range };
    }
    case 'isolated': {
      const { equation, isolated } = solved;
      const emit = (expression: Expression) => grown.expression(expression, equation);
      return {
        name,
        node: grown.definition(unknown, () => emit(isolated.value), equation),
        equation,
        range,
        notNegative: isolated.notNegative.map(emit),
        assumptions:
          isolated.hasOpposite && range < 0
            ? [`Of the two values of ${name} that satisfy the equation, the one that is not negative is taken.`]
            : [],
      };
    }
  }
}
