import { format, spanOf } from '../language';
import type { Edit, Span } from '../text';
import type { EditedSheet } from './contract';

/** The edits that lay a cell out tidily; with `within`, those of the statements that it touches. */
export function formattingEdits({ program }: EditedSheet, cell: string, within?: Span): Edit[] {
  const tree = program.tree(cell);
  if (!tree) {
    return [];
  }
  const edits = format(tree);
  if (!within) {
    return edits;
  }
  // Whole statements: part of a table laid out on its own would be laid out otherwise by the next call.
  const touched = tree.statements
    .map((node) => spanOf(tree, node))
    .filter(({ start, end }) => start <= within.end && within.start <= end);
  const start = Math.min(within.start, ...touched.map((span) => span.start));
  const end = Math.max(within.end, ...touched.map((span) => span.end));
  const first = tree.text.lastIndexOf('\n', start - 1) + 1;
  return edits.filter(({ span }) => first <= span.start && span.end <= end);
}
