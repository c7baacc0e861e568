import type { Statement } from '../checking/binding';
import { Node, spanOf } from '../syntax/tree';
import { solutionParts, solveParts, togetherParts } from './solution-parts';

/** The comments that speak of one unknown of a `solve`: beside its equation; for the first, beside the names, too. */
export function solutionRemark({ cell, index, node, expression, defines }: Statement): string | undefined {
  const { tree, meaning } = cell;
  const { unknowns } = solveParts(tree, tree.statements[index]);
  const isFirst = unknowns[0]?.name === defines?.text;
  const own = tree.kinds[expression] === Node.Solution ? [solutionParts(tree, expression).equation] : [];
  const together = tree.kinds[expression] === Node.Together && isFirst ? togetherParts(tree, expression).equations : [];
  const ends = [...own, ...together].map((equation) => spanOf(tree, meaning.writtenNode(equation.node)).end);
  if (isFirst) {
    ends.unshift(tree.ends[unknowns.at(-1)?.node ?? node]);
  }
  const texts = tree.comments.flatMap(({ span, text }) =>
    text !== '' && ends.some((end) => span.start >= end && !tree.text.slice(end, span.start).includes('\n'))
      ? [text]
      : [],
  );
  return texts.length > 0 ? texts.join('; ') : undefined;
}
