import { children, Node, nodeAt, textOf } from '../language';
import type { EditedSheet } from './contract';

/**
 * Whose chain is asked for at an offset: the name there, a field with its record (`kiln.drop`), else what the statement
 * there gives. Undefined where no value has a name.
 */
export function askedName({ program }: EditedSheet, cell: string, offset: number): string | undefined {
  const tree = program.tree(cell);
  const found = tree && nodeAt(tree, offset);
  if (!tree) {
    return undefined;
  }
  const path = found ? [found.node, ...[...found.parents].reverse()] : [];
  const names = program.names();
  for (const node of path) {
    const text = textOf(tree, node).replace(/\s+/g, '');
    if (tree.kinds[node] === Node.Member && names.has(text.split('.')[0])) {
      return text;
    }
    const [parent] = path.slice(path.indexOf(node) + 1);
    const isField = parent !== undefined && tree.kinds[parent] === Node.Member && tree.firstChildren[parent] !== node;
    const isLabel =
      parent !== undefined &&
      (tree.kinds[parent] === Node.Field || tree.kinds[parent] === Node.Argument) &&
      tree.firstChildren[parent] === node &&
      [...children(tree, parent)].length > 1;
    if (tree.kinds[node] === Node.Name && !isField && !isLabel && names.has(text)) {
      return text;
    }
  }
  const result = program.results(cell).find(({ span }) => span.start <= offset && offset <= span.end);
  return result?.name;
}
