import type { Span } from './span';

/** Replaces the text at `span` by `newText`. */
export interface Edit {
  readonly span: Span;
  readonly newText: string;
}

/** The text after all edits; they may come in any order and must not overlap. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const ordered = [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  let result = '';
  let at = 0;
  for (const { span, newText } of ordered) {
    if (span.start < at) {
      continue; // Overlaps the edit before it; the first one wins so that no text is lost twice.
    }
    result += text.slice(at, span.start) + newText;
    at = span.end;
  }
  return result + text.slice(at);
}
