import { nodeAt, spanOf } from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';

/** The stretches around an offset that mean something, the smallest first: a word, what it is part of, its cell. */
export function selectionRangesAt({ program }: EditedSheet, cell: string, offset: number): Span[] {
  const tree = program.tree(cell);
  if (!tree) {
    return [];
  }
  const found = nodeAt(tree, offset);
  const spans = found ? [found.node, ...[...found.parents].reverse()].map((node) => spanOf(tree, node)) : [];
  const comment = tree.comments.find(({ span }) => span.start <= offset && offset <= span.end);
  spans.unshift(...(comment ? [comment.span] : []));
  spans.push({ start: 0, end: tree.text.length });
  // Each holds the one before and is larger.
  return spans.filter((span, i) => {
    const inner = spans[i - 1];
    return !inner || (span.start <= inner.start && inner.end <= span.end && size(span) > size(inner));
  });
}

const size = ({ start, end }: Span): number => end - start;
