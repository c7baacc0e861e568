import { Node, nodesBelow, type SyntaxTree, spanOf } from '../language';
import type { Diagnostic, Edit, Span } from '../text';

/**
 * The edits of all fixes that need no person's eye, for one go. A conductor is never touched: its size, metal or
 * insulation is a decision, whatever the fix says of itself. Of two fixes that overlap, the first one is taken.
 */
export function fixAllEdits(tree: SyntaxTree, problems: readonly Diagnostic[]): Edit[] {
  const conductors = tree.statements.flatMap((statement) =>
    [...nodesBelow(tree, statement)]
      .filter((node) => tree.kinds[node] === Node.Designation)
      .map((node) => spanOf(tree, node)),
  );
  const taken: Edit[] = [];
  for (const { fixes = [] } of problems) {
    const safe = fixes.filter((fix) => fix.safe);
    const [only] = safe;
    if (safe.length !== 1 || fixes.length !== 1) {
      continue; // With a choice of fixes a person chooses.
    }
    const touches = (span: Span) => only.edits.some((edit) => edit.span.start < span.end && span.start < edit.span.end);
    if (
      !conductors.some(touches) &&
      !taken.some(({ span }) => touches(span) || only.edits.some((e) => same(e.span, span)))
    ) {
      taken.push(...only.edits);
    }
  }
  return taken.sort((a, b) => a.span.start - b.span.start);
}

const same = (a: Span, b: Span): boolean => a.start === b.start && a.end === b.end;
