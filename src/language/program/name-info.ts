import type { Cell } from '../checking/binding';
import type { NameTable } from '../checking/name-table';
import type { NameInfo } from '../program';
import { spanOf } from '../syntax/tree';

/** What each defined name stands for and where it is used. A name defined twice is told by its first definition. */
export function namesOf(names: NameTable, cells: Iterable<Cell>): ReadonlyMap<string, NameInfo> {
  const references = new Map<string, { cell: string; span: ReturnType<typeof spanOf> }[]>();
  for (const { id, written, meaning, statements } of cells) {
    const defining = new Set(statements.flatMap((statement) => statement.nameNodes));
    meaning.names.forEach((name, node) => {
      if (name && node < written.count && !defining.has(node)) {
        const places = references.get(name.text);
        const place = { cell: id, span: spanOf(written, node) };
        if (places) {
          places.push(place);
        } else {
          references.set(name.text, [place]);
        }
      }
    });
  }
  const all = new Map<string, NameInfo>();
  for (const name of names.defined()) {
    const [first] = name.definitions;
    const { tree, id } = first.cell;
    all.set(name.text, {
      name: name.text,
      cell: id,
      definition: spanOf(tree, first.nameNode),
      type: name.type,
      references: references.get(name.text) ?? [],
      statement: first.index,
    });
  }
  return all;
}
