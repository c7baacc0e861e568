import { isBroken } from '../syntax/navigation';
import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';
import { type Expression, readExpression, readWhole } from './expression';
import { isIn, Planner } from './planner';
import { type Report, reports } from './reports';

export interface Equation {
  readonly node: number;
  readonly left: Expression;
  readonly right: Expression;
}

/** One name behind `solve`. */
export interface Unknown {
  readonly node: number;
  readonly name: string;
  readonly hasBounds: boolean;
}

/** How one unknown is found. What is found may use other unknowns by name. */
export type Way = {
  readonly unknown: Unknown;
} /** From one equation: by a formula, of which there may be several, or else by a search between its bounds. */ & (
  | { readonly kind: 'alone'; readonly equation: Equation; readonly formulas: readonly Expression[] }
  /** From as many linear equations as there are unknowns. */
  | { readonly kind: 'together'; readonly equations: readonly Equation[]; readonly unknowns: readonly Unknown[] }
  | { readonly kind: 'none' }
);

export interface Plan {
  readonly ways: readonly Way[];
  /** Why there is no way for some of them. */
  readonly report?: Report;
}

/** Longer equations, in characters, are not turned round at all. */
const longestWritten = 2000;
/** More unknowns than this are not solved for at once. */
const mostUnknowns = 12;

/** Finds a way to each unknown of a Solve node from the equations below it, without knowing what anything stands for. */
export function planOf(tree: SyntaxTree, solve: number): Plan {
  const below = [...children(tree, solve)];
  const unknowns = below.filter((node) => tree.kinds[node] === Node.Unknown).map((node) => unknownAt(tree, node));
  const names = new Set(unknowns.map(({ name }) => name));
  const none = (report?: Report): Plan => ({
    ways: unknowns.map((unknown): Way => ({ kind: 'none', unknown })),
    ...(report && { report }),
  });
  if (isBroken(tree, solve) || names.size < unknowns.length) {
    return none(); // Reported already, or as a name that is defined twice.
  }
  const equations = below
    .filter((node) => tree.kinds[node] === Node.Equation)
    .map((node): Equation => {
      const left = tree.firstChildren[node];
      const right = tree.nextSiblings[left];
      const isShort = tree.ends[node] - tree.starts[node] <= longestWritten;
      const read = (side: number): Expression =>
        isShort ? readExpression(tree, side, names) : readWhole(tree, side, names);
      return { node, left: read(left), right: read(right) };
    });
  if (unknowns.length > mostUnknowns) {
    return none(reports.tooManyUnknowns(unknowns, mostUnknowns));
  }
  const idle = unknowns.find(({ name }) => !equations.some((equation) => isIn(equation, name)));
  if (idle) {
    return none(reports.inNoEquation(idle));
  }
  if (equations.length < unknowns.length) {
    return none(reports.tooFew(unknowns, equations.length));
  }
  if (equations.length > unknowns.length) {
    return none(reports.tooMany(unknowns, equations));
  }
  return new Planner(tree, equations, unknowns).plan();
}

function unknownAt(tree: SyntaxTree, node: number): Unknown {
  const name = tree.firstChildren[node];
  const range = tree.nextSiblings[name];
  return { node, name: textOf(tree, name), hasBounds: range >= 0 && tree.kinds[range] === Node.Range };
}
