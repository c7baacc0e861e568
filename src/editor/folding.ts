import { LineIndex, type Span } from '../text';
import type { EditedSheet } from './contract';

/** A stretch of lines that can be shown as its first. */
export interface Fold {
  readonly span: Span;
  readonly kind: 'statement' | 'comment';
}

/** Statements and runs of comments that take more than one line. */
export function foldsOf({ program }: EditedSheet, cell: string): Fold[] {
  const tree = program.tree(cell);
  if (!tree) {
    return [];
  }
  const lines = new LineIndex(tree.text);
  const line = (offset: number) => lines.at(offset).line;
  const statements = tree.statements.map((node): Fold => {
    const [start, end] = [tree.starts[node], tree.ends[node]];
    return { kind: 'statement', span: { start, end } };
  });
  const comments: Fold[] = [];
  let run: { start: number; end: number } | undefined;
  for (const { span } of tree.comments) {
    const alone = /(^|\n)[ \t]*$/.test(tree.text.slice(0, span.start));
    if (run && alone && line(span.start) === line(run.end) + 1) {
      run.end = span.end;
      continue;
    }
    comments.push(...(run ? [{ kind: 'comment' as const, span: run }] : []));
    run = alone ? { ...span } : undefined;
  }
  comments.push(...(run ? [{ kind: 'comment' as const, span: run }] : []));
  return [...statements, ...comments]
    .filter(({ span }) => line(span.end) > line(span.start))
    .sort((a, b) => a.span.start - b.span.start);
}
