import { type NameInfo, Node, type SyntaxTree, spanOf, textOf } from '../../language';
import { lintPage, rules } from '../../lints';
import { parseUnit } from '../../units';
import type { EditedSheet, Hover } from '../contract';
import { pathAt } from '../path-at';
import { conductorPage } from './conductor';
import { functionPageOf, parameterPage } from './function';
import { memberPage, namePage } from './name';
import { unitPage } from './unit';

/** What is to be told of the text at an offset of a cell; undefined where there is nothing to tell. */
export function hoverAt(sheet: EditedSheet, cell: string, offset: number): Hover | undefined {
  const tree = sheet.program.tree(cell);
  if (!tree) {
    return undefined;
  }
  const path = pathAt(tree, offset);
  for (const [depth, node] of path.entries()) {
    const found = pageOf({ sheet, cell, tree, node, parent: path[depth + 1] ?? -1, offset });
    if (found) {
      return found;
    }
  }
  return undefined;
}

interface Spot {
  readonly sheet: EditedSheet;
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly node: number;
  /** -1 for a statement. */
  readonly parent: number;
  readonly offset: number;
}

function pageOf(spot: Spot): Hover | undefined {
  const { sheet, cell, tree, node, offset } = spot;
  const at = (markdown: string | undefined): Hover | undefined =>
    markdown === undefined ? undefined : { span: spanOf(tree, node), markdown };
  switch (tree.kinds[node]) {
    case Node.Designation:
      return at(conductorPage(sheet.program, sheet.program.valueAt(cell, node)));
    case Node.Name:
      return at(nameAt(spot));
    case Node.Member:
      return at(memberPage(sheet.program, cell, node));
    case Node.Quantity:
    case Node.Convert: {
      const span = { start: tree.unitStarts[node], end: tree.unitEnds[node] };
      const onUnit = tree.units[node] >= 0 && span.start <= offset && offset <= span.end;
      const unit = onUnit ? parseUnit(tree.unitTexts[tree.units[node]]) : undefined;
      return unit && !('problem' in unit) ? { span, markdown: unitPage(unit) } : undefined;
    }
    default:
      return undefined;
  }
}

/** A name is a function, a parameter, a lint, a field or something the sheet defines, by where it stands. */
function nameAt({ sheet, tree, node, parent }: Spot): string | undefined {
  const { program } = sheet;
  const name = textOf(tree, node);
  const first = parent >= 0 && tree.firstChildren[parent] === node;
  switch (parent >= 0 ? tree.kinds[parent] : -1) {
    case Node.Call:
      return first ? functionPageOf(program, name) : undefined;
    case Node.BlockCall:
      return first ? nameOrNothing(program.names().get(name), sheet) : functionPageOf(program, name);
    case Node.Field:
    case Node.Argument:
      return first && tree.nextSiblings[node] >= 0
        ? parameterPage(program, calledAt(tree, parent), name)
        : nameOrNothing(program.names().get(name), sheet);
    case Node.Member:
      return first ? nameOrNothing(program.names().get(name), sheet) : undefined; // The member tells of its field.
    case Node.Allow: {
      const lint = rules.find((rule) => rule.id === name);
      return lint && lintPage(lint);
    }
    default:
      return nameOrNothing(program.names().get(name), sheet);
  }
}

const nameOrNothing = (info: NameInfo | undefined, { program }: EditedSheet): string | undefined =>
  info && namePage(program, info);

/** The name of the function that a field or an argument belongs to. */
function calledAt(tree: SyntaxTree, argument: number): string {
  for (let node = 0; node < tree.count; node++) {
    const kind = tree.kinds[node];
    if (kind !== Node.Call && kind !== Node.BlockCall) {
      continue;
    }
    const named = tree.firstChildren[node];
    for (let child = named; child >= 0; child = tree.nextSiblings[child]) {
      if (child === argument) {
        return textOf(tree, kind === Node.Call ? named : tree.nextSiblings[named]);
      }
    }
  }
  return '';
}
