import { type NameInfo, Node, nodeAt, textOf } from '../language';
import type { EditedSheet, Place } from './contract';

/** Where the name at an offset is defined; empty for anything that the sheet does not define. */
export function definitionAt(sheet: EditedSheet, cell: string, offset: number): readonly Place[] {
  const info = nameAt(sheet, cell, offset);
  return info ? [{ cell: info.cell, span: info.definition }] : [];
}

/** Every place that the name at an offset stands at, its definition first. */
export function referencesAt(sheet: EditedSheet, cell: string, offset: number): readonly Place[] {
  const info = nameAt(sheet, cell, offset);
  return info ? [{ cell: info.cell, span: info.definition }, ...info.references] : [];
}

function nameAt({ program }: EditedSheet, cell: string, offset: number): NameInfo | undefined {
  const tree = program.tree(cell);
  const node = tree ? nodeAt(tree, offset)?.node : undefined;
  if (!tree || node === undefined || tree.kinds[node] !== Node.Name) {
    return undefined;
  }
  const info = program.names().get(textOf(tree, node));
  const places = info ? [{ cell: info.cell, span: info.definition }, ...info.references] : [];
  // A field or a parameter may be spelled like a name; only the binder's own places count.
  return places.some((place) => place.cell === cell && place.span.start === tree.starts[node]) ? info : undefined;
}
