import { children, type NameInfo, Node, nodeAt, type SyntaxTree, spanOf, textOf } from '../language';
import type { Span } from '../text';
import { columnPlacesAt } from './column-places';
import type { EditedSheet, Place } from './contract';
import { valueNames } from './value-names';

/** A name of the sheet, a parameter of one of its functions or a column of a schedule, with every place that it stands at. */
export interface NamedPlaces {
  readonly name: string;
  /** Where it stands under the cursor. */
  readonly at: Span;
  readonly definition: Place;
  readonly references: readonly Place[];
  /** What the sheet knows of it; absent for a parameter, which only its function's body sees, and for a column. */
  readonly info?: NameInfo;
  /** For a column: the schedule that it belongs to. */
  readonly schedule?: string;
}

/** The name at an offset; undefined for anything that the sheet does not define. */
export function namedPlacesAt(sheet: EditedSheet, cell: string, offset: number): NamedPlaces | undefined {
  const tree = sheet.program.tree(cell);
  const found = tree && nodeAt(tree, offset);
  if (!found || tree.kinds[found.node] !== Node.Name) {
    return undefined;
  }
  const at = spanOf(tree, found.node);
  const parameter = parameterPlaces(tree, cell, found.parents[0] ?? found.node, found.node);
  if (parameter) {
    return { ...parameter, at };
  }
  const column = columnPlacesAt(sheet.program, cell, offset);
  if (column) {
    return { ...column, at };
  }
  const info = sheet.program.name(textOf(tree, found.node));
  if (!info) {
    return undefined;
  }
  const definition = { cell: info.cell, span: info.definition };
  // A field or a parameter may be spelled like a name; only the binder's own places count.
  return [definition, ...info.references].some((place) => place.cell === cell && place.span.start === at.start)
    ? { name: info.name, at, definition, references: info.references, info }
    : undefined;
}

/** The places of a parameter inside the definition of its function. */
function parameterPlaces(
  tree: SyntaxTree,
  cell: string,
  statement: number,
  node: number,
): Omit<NamedPlaces, 'at'> | undefined {
  if (tree.kinds[statement] !== Node.FunctionDefinition) {
    return undefined;
  }
  const [own, list, body] = children(tree, statement);
  const name = textOf(tree, node);
  const declared =
    list === undefined ? -1 : ([...children(tree, list)].find((one) => textOf(tree, one) === name) ?? -1);
  if (node === own || declared < 0 || body === undefined) {
    return undefined;
  }
  const used = [...valueNames(tree, body)].filter((one) => textOf(tree, one) === name);
  if (node !== declared && !used.includes(node)) {
    return undefined;
  }
  const place = (one: number): Place => ({ cell, span: spanOf(tree, one) });
  return { name, definition: place(declared), references: used.map(place) };
}
