import assert from 'node:assert/strict';
import { SheetSession } from '../../src/core';
import type { Edit, Span } from '../../src/text';

/** A sheet with one calculation cell for each text, in a session; the cursor stands where a text holds `¦`. */
export function cells(...texts: readonly string[]) {
  const session = new SheetSession();
  session.update(
    texts.map((text, i) => ({ id: String(i), kind: 'calculation' as const, text: text.replace('¦', '') })),
  );
  const cell = Math.max(
    0,
    texts.findIndex((text) => text.includes('¦')),
  );
  return { session, cell: String(cell), offset: Math.max(0, texts[cell].indexOf('¦')), texts };
}

/** A text with spans of it in brackets, to compare what a feature points at. */
export function bracketed(text: string, spans: readonly Span[]): string {
  const marks: Edit[] = spans.flatMap(({ start, end }) => [
    { span: { start, end: start }, newText: '⟦' },
    { span: { start: end, end }, newText: '⟧' },
  ]);
  marks.sort((a, b) => a.span.start - b.span.start);
  let result = '';
  let at = 0;
  for (const { span, newText } of marks) {
    assert.ok(span.start >= at, 'spans overlap');
    result += text.slice(at, span.start) + newText;
    at = span.start;
  }
  return result + text.slice(at);
}
