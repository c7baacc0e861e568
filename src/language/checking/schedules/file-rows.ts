import type { GivenRows } from '../../program';
import { textContent } from '../../syntax/navigation';
import { Node, type SyntaxTree } from '../../syntax/tree';
import type { Cell, Statement } from '../binding';
import type { Checker } from '../checker';

/** The name of the file that a schedule is read from; -1 where its rows stand below it. */
export function fileNode(tree: SyntaxTree, schedule: number): number {
  const second = tree.nextSiblings[tree.firstChildren[schedule]];
  return second >= 0 && tree.kinds[second] === Node.Text ? second : -1;
}

/** True for a cell with a schedule that is read from a file. */
export const namesFile = ({ tree, statements }: Cell): boolean =>
  statements.some(({ node }) => tree.kinds[node] === Node.Schedule && fileNode(tree, node) >= 0);

/** The rows of the file, or a report at its name why they are not to be had. What was found is noted for later. */
export function rowsOf(c: Checker, schedule: number, file: number): GivenRows | undefined {
  const found = c.context.rows(textContent(c.tree, file));
  c.meaning.files.set(schedule, found);
  if ('problem' in found) {
    c.report(found.problem.code, file, found.problem.message);
    return undefined;
  }
  return found;
}

/** True for a schedule whose file gives other rows now than when it was checked. */
export function readsOtherRows({ cell, node }: Statement): boolean {
  const before = cell.meaning.files.get(node);
  if (!before) {
    return false;
  }
  const now = cell.context.rows(textContent(cell.tree, fileNode(cell.tree, node)));
  return 'problem' in before && 'problem' in now ? before.problem.message !== now.problem.message : before !== now;
}
