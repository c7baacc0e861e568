import type { Root, RootContent } from 'mdast';
import { fromMarkdown, type Options } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFromMarkdown } from 'mdast-util-gfm';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfm } from 'micromark-extension-gfm';
import type { Span } from '../text';
import { shortLines } from './short-lines';
import { withoutDepths } from './tangled';

/** A block of a Markdown text that stands in no list, quotation or other block. */
export interface MarkdownBlock extends Span {
  readonly type: RootContent['type'];
}

/** Only where blocks begin and end is wanted, so nothing inside a line is read: it costs most and changes no block. */
const noInline = [
  'attention',
  'autolink',
  'characterEscape',
  'characterReference',
  'codeText',
  'hardBreakEscape',
  'htmlText',
  'labelEnd',
  'labelStartImage',
  'labelStartLink',
];

const { document, flow } = gfm();

const options: Options = {
  extensions: [frontmatter(['yaml']), { document, flow }, { disable: { null: noInline } }],
  mdastExtensions: [frontmatterFromMarkdown(['yaml']), gfmFromMarkdown().map(({ transforms: _, ...blocks }) => blocks)],
};

/** The top-level blocks of a Markdown text in order; each starts at the beginning of its line. */
export function markdownBlocks(text: string): MarkdownBlock[] {
  // The parser drops a byte order mark and then counts offsets from behind it; any other letter reads the same.
  const marked = text.startsWith('\uFEFF') ? `x${text.slice(1)}` : text;
  const short = shortLines(withoutDepths(marked));
  const root: Root = fromMarkdown(short.text, options);
  return root.children.map(({ type, position }) => {
    let start = short.whole(position!.start.offset!);
    while (start > 0 && (text[start - 1] === ' ' || text[start - 1] === '\t')) {
      start--;
    }
    return { type, start, end: short.whole(position!.end.offset!) };
  });
}
