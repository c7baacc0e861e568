import { children, Node, type SyntaxTree } from '../language';
import { voltDimension, writtenBase, writtenNode } from './written-values';

/** A voltage that somebody wrote down under a name. */
export interface WrittenVolts {
  /** The definition's expression. */
  readonly node: number;
  readonly volts: number;
}

/** Readings that belong together stand together. */
const nearby = 5;

const voltsIn = new WeakMap<SyntaxTree, ReadonlyMap<number, readonly WrittenVolts[]>>();

/** The voltage that a statement writes down and the few that stand before it in the cell, the nearest first; or none. */
export function voltsBefore(tree: SyntaxTree, statement: number): readonly WrittenVolts[] {
  let found = voltsIn.get(tree);
  if (!found) {
    found = readVolts(tree);
    voltsIn.set(tree, found);
  }
  return found.get(statement) ?? [];
}

function readVolts(tree: SyntaxTree): Map<number, readonly WrittenVolts[]> {
  const found = new Map<number, readonly WrittenVolts[]>();
  let recent: readonly WrittenVolts[] = [];
  for (const statement of tree.statements) {
    const expression = tree.kinds[statement] === Node.Definition ? [...children(tree, statement)][1] : undefined;
    const literal = expression === undefined ? undefined : writtenNode(tree, expression);
    const written = literal === undefined ? undefined : writtenBase(tree, literal);
    if (expression !== undefined && written?.dimension === voltDimension) {
      recent = [{ node: expression, volts: written.base }, ...recent.slice(0, nearby - 1)];
      found.set(statement, recent);
    }
  }
  return found;
}
