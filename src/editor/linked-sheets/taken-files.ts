import { children, Node, textContent, textOf } from '../../language';
import type { LinkedSheet } from './index';

/** The files that a sheet takes a name from. */
export function filesTakenFrom({ program, cells, fileOf }: LinkedSheet, name: string): string[] {
  return cells.flatMap(({ id }) => {
    const tree = program.tree(id);
    return (tree?.statements ?? []).flatMap((node) => {
      const parts = tree!.kinds[node] === Node.Use ? [...children(tree!, node)] : [];
      const from = parts.find((part) => tree!.kinds[part] === Node.Text);
      const takes = parts.some((part) => tree!.kinds[part] === Node.Name && textOf(tree!, part) === name);
      return (from !== undefined && takes && fileOf(textContent(tree!, from))) || [];
    });
  });
}
