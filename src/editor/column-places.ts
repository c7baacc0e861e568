import { children, Node, nodeAt, nodesBelow, type Program, type SyntaxTree, spanOf, textOf } from '../language';
import type { Place } from './contract';
import { valueNames } from './value-names';

/** A column of a schedule, with every place that it is named at. */
export interface ColumnPlaces {
  /** The schedule's own name. */
  readonly schedule: string;
  readonly name: string;
  /** Its head or the line that computes it. */
  readonly definition: Place;
  readonly references: readonly Place[];
}

/** The column at an offset: at its head, in another column's expression, or behind the schedule's name and a point. */
export function columnPlacesAt(program: Program, cell: string, offset: number): ColumnPlaces | undefined {
  const tree = program.tree(cell);
  const found = tree && nodeAt(tree, offset);
  if (!found || tree.kinds[found.node] !== Node.Name) {
    return undefined;
  }
  const name = textOf(tree, found.node);
  const parent = found.parents.at(-1);
  const [first, second] = parent === undefined ? [] : children(tree, parent);
  const isMember = parent !== undefined && tree.kinds[parent] === Node.Member && second === found.node;
  const own = isMember ? scheduleNamed(program, textOf(tree, first)) : { tree, cell, node: found.parents[0] ?? -1 };
  if (!own || own.node < 0 || own.tree.kinds[own.node] !== Node.Schedule) {
    return undefined;
  }
  const column = columnOf(own.tree, own.node, name);
  const inside = namesInside(own.tree, own.node, name);
  if (column === undefined || (!isMember && found.node !== column && !inside.includes(found.node))) {
    return undefined;
  }
  const schedule = textOf(own.tree, own.tree.firstChildren[own.node]);
  // Where it is named, the schedule is.
  const cells = new Set((program.name(schedule)?.references ?? []).map((reference) => reference.cell));
  const place = (node: number): Place => ({ cell: own.cell, span: spanOf(own.tree, node) });
  return {
    schedule,
    name,
    definition: place(column),
    references: [...inside.map(place), ...[...cells].flatMap((one) => membersIn(program, one, schedule, name))],
  };
}

function scheduleNamed(program: Program, name: string) {
  const info = program.name(name);
  const tree = info && program.tree(info.cell);
  const node = tree?.statements[info!.statement];
  return info && tree && node !== undefined ? { tree, cell: info.cell, node } : undefined;
}

/** The node that names a column of a schedule: in the row of heads or where it is computed. */
function columnOf(tree: SyntaxTree, schedule: number, name: string): number | undefined {
  return [...children(tree, schedule)]
    .flatMap((child) => {
      const kind = tree.kinds[child];
      return kind === Node.HeaderRow
        ? [...children(tree, child)]
        : kind === Node.Column
          ? [tree.firstChildren[child]]
          : [];
    })
    .find((node) => node >= 0 && textOf(tree, node) === name);
}

/** Where the expressions of a schedule's computed columns name another of its columns. */
const namesInside = (tree: SyntaxTree, schedule: number, name: string): number[] =>
  [...children(tree, schedule)]
    .filter((child) => tree.kinds[child] === Node.Column)
    .flatMap((column) => {
      const [, expression] = children(tree, column);
      return expression === undefined ? [] : [...valueNames(tree, expression)];
    })
    .filter((node) => textOf(tree, node) === name);

/** `panel.load`, wherever it stands in a cell. */
function membersIn(program: Program, cell: string, schedule: string, name: string): Place[] {
  const tree = program.tree(cell);
  return (tree?.statements ?? []).flatMap((statement) =>
    [...nodesBelow(tree!, statement)].flatMap((node) => {
      const [record, field] = tree!.kinds[node] === Node.Member ? children(tree!, node) : [];
      const isColumn =
        record !== undefined &&
        field !== undefined &&
        tree!.kinds[record] === Node.Name &&
        textOf(tree!, record) === schedule &&
        textOf(tree!, field) === name;
      return isColumn ? [{ cell, span: spanOf(tree!, field) }] : [];
    }),
  );
}
