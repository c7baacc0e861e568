import type { SyntaxTree } from '../language';
import type { Fix, Severity } from '../text';

/** Begins the title of the fix that accepts a finding. */
export const reasonFixTitle = 'State the reason: ';

/**
 * Accepts a finding by an `allow` on the line before the statement. The reason is left for the author to write between
 * the quotes: until then the language says that it is missing.
 */
export function reasonFix(tree: SyntaxTree, statement: number, lint: string): Fix {
  const start = tree.starts[statement];
  const edits = [{ span: { start, end: start }, newText: `allow ${lint} ""\n` }];
  return { title: `${reasonFixTitle}allow ${lint} "…"`, edits, safe: false };
}

/** Questions are answered and not allowed; advice and faults may have a reason. */
export const mayHaveReason = (severity: Severity): boolean => severity !== 'hint';
