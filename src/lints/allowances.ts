import { children, Node, type Program, type SyntaxTree, spanOf, textContent, textOf } from '../language';
import type { Diagnostic, Span } from '../text';

/** An `allow` statement: which lint it silences on the statement below it, and why. */
export interface Allowance {
  readonly cell: string;
  /** Index in the cell's `statements` of the `allow` itself, and of the statement that it speaks for. */
  readonly index: number;
  readonly target: number;
  readonly lint: string;
  readonly lintSpan: Span;
  /** Without its quotes; empty when none was written. */
  readonly reason: string;
}

/** A finding that an `allow` silenced: for the page that prints the reasons. */
export interface AllowedFinding {
  readonly allowance: Allowance;
  readonly finding: Diagnostic;
}

/** The allowances of a cell in order. Several in a row all speak for the first statement behind them. */
export function allowancesIn(cell: string, tree: SyntaxTree): Allowance[] {
  const allowances: Allowance[] = [];
  let target = tree.statements.length;
  for (let index = tree.statements.length - 1; index >= 0; index--) {
    const node = tree.statements[index];
    if (tree.kinds[node] !== Node.Allow) {
      target = index;
      continue;
    }
    const [name, reason] = [...children(tree, node)];
    if (name !== undefined && tree.kinds[name] === Node.Name) {
      allowances.unshift({
        cell,
        index,
        target,
        lint: textOf(tree, name),
        lintSpan: spanOf(tree, name),
        reason: reason !== undefined && tree.kinds[reason] === Node.Text ? textContent(tree, reason) : '',
      });
    }
  }
  return allowances;
}

/** Every allowance of the sheet, for the page that states their reasons. */
export const allowancesOf = (program: Program, cells: Iterable<string>): Allowance[] =>
  [...cells].flatMap((cell) => {
    const tree = program.tree(cell);
    return tree ? allowancesIn(cell, tree) : [];
  });
