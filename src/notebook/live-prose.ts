import type { Nodes } from 'mdast';
import { fromMarkdown, type Options } from 'mdast-util-from-markdown';
import type { Span } from '../text';
import { brackets, isTangled } from './tangled';

/** Emphasis moves no code span, and pairing its marks costs most. */
const noEmphasis: Options = { extensions: [{ disable: { null: ['attention'] } }] };

/**
 * Where a prose cell shows live values: the expression of each code span that starts with `=`, as a stretch of the
 * cell's text.
 */
export function liveSpans(text: string): Span[] {
  if (!/`\s*=/.test(text) || isTangled(text, brackets)) {
    return [];
  }
  const found: Span[] = [];
  const visit = (node: Nodes): void => {
    if (node.type === 'inlineCode') {
      const start = node.position!.start.offset!;
      const source = text.slice(start, node.position!.end.offset!);
      const lead = /^(`+)\s*=/.exec(source);
      if (lead) {
        found.push({ start: start + lead[0].length, end: start + source.length - lead[1].length });
      }
    } else if ('children' in node) {
      node.children.forEach(visit);
    }
  };
  visit(fromMarkdown(text, noEmphasis));
  return found;
}
