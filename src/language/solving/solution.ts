import { Node, type SyntaxTree } from '../syntax/tree';
import { planOf } from './plan';
import type { Report } from './reports';
import { SolutionTree } from './solution-tree';

/** What became of one Solve node. */
export interface Solved {
  /** For each unknown a Definition with what gives it; the Unknown as written where there is no way to it. */
  readonly nodes: readonly number[];
  readonly report?: Report;
}

interface SolvedTree {
  readonly tree: SyntaxTree;
  /** For each node of the tree the written one that it is or copies, -1 for none; absent when nothing was added. */
  readonly origins?: readonly number[];
  /** By Solve node. */
  readonly solved: ReadonlyMap<number, Solved>;
}

const nothing: ReadonlyMap<number, Solved> = new Map();

/** Finds a way to the unknowns of every solve of a cell, and adds the rearranged formulas to its tree. */
export function withSolutions(tree: SyntaxTree): SolvedTree {
  const solves = tree.statements.filter((node) => tree.kinds[node] === Node.Solve);
  if (solves.length === 0) {
    return { tree, solved: nothing };
  }
  const grown = new SolutionTree(tree);
  const solved = new Map(
    solves.map((solve): [number, Solved] => {
      const { ways, report } = planOf(tree, solve);
      const nodes = ways.map((way) => (way.kind === 'none' ? way.unknown.node : grown.definition(way)));
      return [solve, { nodes, ...(report && { report }) }];
    }),
  );
  return { ...grown.finish(), solved };
}
