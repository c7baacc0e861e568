import { type NameInfo, Node, nodeAt, type SyntaxTree, spanOf, textOf, unitSpanOf } from '../../language';
import { editionOf, lintPage, ruleById } from '../../lints';
import { parseUnit } from '../../units';
import type { EditedSheet, Hover } from '../contract';
import { conductorPage, conductorWritten } from './conductor';
import { functionPageOf, parameterPage } from './function';
import { memberPage, namePage } from './name';
import { columnPage, isOfSchedule } from './schedule';
import { unitPage } from './unit';

/** What is to be told of the text at an offset of a cell; undefined where there is nothing to tell. */
export function hoverAt(sheet: EditedSheet, cell: string, offset: number): Hover | undefined {
  const tree = sheet.program.tree(cell);
  if (!tree) {
    return undefined;
  }
  const found = nodeAt(tree, offset);
  const path = found ? [found.node, ...[...found.parents].reverse()] : [];
  for (const [depth, node] of path.entries()) {
    const hover = pageOf({ sheet, cell, tree, node, above: path.slice(depth + 1), offset });
    if (hover) {
      return hover;
    }
  }
  return undefined;
}

interface Spot {
  readonly sheet: EditedSheet;
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly node: number;
  /** The nodes that hold it, innermost first. */
  readonly above: readonly number[];
  readonly offset: number;
}

function pageOf(spot: Spot): Hover | undefined {
  const { sheet, cell, tree, node, offset } = spot;
  const at = (markdown: string | undefined): Hover | undefined =>
    markdown === undefined ? undefined : { span: spanOf(tree, node), markdown };
  switch (tree.kinds[node]) {
    case Node.Designation:
      return at(designationPage(spot));
    case Node.Name:
      return at(nameAt(spot));
    case Node.Member:
      return at(memberPage(sheet.program, cell, node));
    case Node.Quantity:
    case Node.Convert: {
      const span = unitSpanOf(tree, node);
      const onUnit = tree.units[node] >= 0 && span.start <= offset && offset <= span.end;
      const unit = onUnit ? parseUnit(tree.unitTexts[tree.units[node]]) : undefined;
      return unit && !('problem' in unit) ? { span, markdown: unitPage(unit) } : undefined;
    }
    default:
      return undefined;
  }
}

function designationPage({ sheet, tree, node }: Spot): string | undefined {
  const conductor = conductorWritten(sheet.program, tree, node);
  return conductor && conductorPage(sheet.program, conductor);
}

/** A name is a function, a parameter, a lint, a field or something the sheet defines, by where it stands. */
function nameAt({ sheet, cell, tree, node, above }: Spot): string | undefined {
  const { program } = sheet;
  const name = textOf(tree, node);
  const schedule = above.find((one) => tree.kinds[one] === Node.Schedule);
  if (schedule !== undefined && isOfSchedule(tree, schedule, node, above)) {
    return columnPage(program, cell, schedule, name);
  }
  const [parent, grandparent] = above;
  const first = parent !== undefined && tree.firstChildren[parent] === node;
  switch (parent === undefined ? undefined : tree.kinds[parent]) {
    case Node.Call:
      return first ? functionPageOf(program, name) : undefined;
    case Node.BlockCall:
      return first ? pageOfName(program.name(name), sheet) : functionPageOf(program, name);
    case Node.Field:
    case Node.Argument:
      return first && tree.nextSiblings[node] >= 0
        ? parameterPage(program, functionCalled(tree, grandparent), name)
        : pageOfName(program.name(name), sheet);
    case Node.Member:
      return first ? pageOfName(program.name(name), sheet) : undefined; // The member tells of its field.
    case Node.Allow: {
      const lint = ruleById.get(name);
      return lint && lintPage(lint, editionOf(program.library.settings));
    }
    default:
      return pageOfName(program.name(name), sheet);
  }
}

const pageOfName = (info: NameInfo | undefined, { program }: EditedSheet): string | undefined =>
  info && namePage(program, info);

/** The name of the function that a Call or a BlockCall calls. */
function functionCalled(tree: SyntaxTree, call: number): string {
  const first = tree.firstChildren[call];
  return textOf(tree, tree.kinds[call] === Node.Call ? first : tree.nextSiblings[first]);
}
