import { children, Node, spanOf, textContent } from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';

/** A text that names a file beside the sheet. */
export interface FileLink {
  /** The name without its quotation marks. */
  readonly span: Span;
  /** As written: a path from the sheet's folder. */
  readonly file: string;
  readonly what: 'sheet' | 'table';
}

/** The files that a cell's `use` and `schedule` name. */
export function linksOf({ program }: EditedSheet, cell: string): FileLink[] {
  const tree = program.tree(cell);
  return (tree?.statements ?? []).flatMap((node) => {
    const kind = tree!.kinds[node];
    if (kind !== Node.Use && kind !== Node.Schedule) {
      return [];
    }
    const text = [...children(tree!, node)].find((child) => tree!.kinds[child] === Node.Text);
    const file = text === undefined ? '' : textContent(tree!, text);
    if (text === undefined || file === '') {
      return [];
    }
    const start = spanOf(tree!, text).start + 1;
    return [{ span: { start, end: start + file.length }, file, what: kind === Node.Use ? 'sheet' : 'table' }];
  });
}
