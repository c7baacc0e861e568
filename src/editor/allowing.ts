import type { SyntaxTree } from '../language';
import { ruleById } from '../lints';
import type { Diagnostic } from '../text';

/** The line that lets a finding stand, but for its reason, which only a person can give. */
export interface Allowing {
  /** Where the line goes: before the statement that the finding is about. */
  readonly offset: number;
  readonly before: string;
  readonly after: string;
}

/** How to allow a lint's finding where it stands; undefined for problems of any other kind. */
export function allowingOf(tree: SyntaxTree, { code, span }: Diagnostic): Allowing | undefined {
  const statement = tree.statements.find((node) => tree.starts[node] <= span.start && span.end <= tree.ends[node]);
  if (!ruleById.has(code) || code.startsWith('allow-') || statement === undefined) {
    return undefined;
  }
  const lineStart = tree.text.lastIndexOf('\n', tree.starts[statement] - 1) + 1;
  return { offset: lineStart, before: `allow ${code} "`, after: '"\n' };
}
