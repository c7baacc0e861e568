import { showValue } from '../../display';
import { children, Node, type Program, type SyntaxTree, textOf } from '../../language';
import { escaped } from '../markdown';

/** True for a name that stands for a column of the schedule around it, or for a word in one of its cells. */
export function isOfSchedule(tree: SyntaxTree, schedule: number, node: number, above: readonly number[]): boolean {
  const kinds = above.map((one) => tree.kinds[one] as Node);
  if (kinds.includes(Node.Column)) {
    return columnsOf(tree, schedule).includes(textOf(tree, node));
  }
  return kinds[0] === Node.HeaderRow || kinds[0] === Node.Row;
}

/** A column: what it holds. Undefined for what is no column, such as a tag in a cell. */
export function columnPage(program: Program, cell: string, schedule: number, name: string): string | undefined {
  const tree = program.tree(cell);
  const result = tree && program.results(cell).find(({ index }) => tree.statements[index] === schedule);
  if (!tree || !columnsOf(tree, schedule).includes(name)) {
    return undefined;
  }
  const owner = textOf(tree, tree.firstChildren[schedule]);
  const value = result?.value;
  const cells =
    value?.kind === 'list'
      ? value.items.flatMap((row) => (row.kind === 'record' ? (row.fields.get(name) ?? []) : []))
      : [];
  const holds = cells.length > 0 ? `: ${escaped(showValue({ kind: 'list', items: cells }))}` : '';
  return `**${escaped(name)}**, column of ${escaped(owner)}${holds}`;
}

/** Names of the columns, written and computed. */
function columnsOf(tree: SyntaxTree, schedule: number): string[] {
  return [...children(tree, schedule)].flatMap((child) => {
    switch (tree.kinds[child] as Node) {
      case Node.HeaderRow:
        return [...children(tree, child)].map((heading) => textOf(tree, heading));
      case Node.Column:
        return [textOf(tree, tree.firstChildren[child])];
      default:
        return [];
    }
  });
}
