import type { PhrasingContent, RootContent, Table as TableNode } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFromMarkdown } from 'mdast-util-gfm';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfm } from 'micromark-extension-gfm';
import { isTangled } from '../notebook';
import { fittedColumns } from './column-widths';
import { type Inline, type Part, plain } from './document';
import { type PictureFiles, picturePart } from './picture';

/** A prose cell's content: its blocks in order, headings with the depth they were written in. */
export type ProsePart = Exclude<Part, { kind: 'heading' }> | ProseHeading;

export interface ProseHeading {
  readonly kind: 'heading';
  /** 1 to 6, as written. */
  readonly depth: number;
  readonly content: readonly Inline[];
}

/**
 * Reads a prose cell. Front matter and comments are left out; other HTML is shown as it was written, and so is a text of
 * nothing but marks.
 */
export const readProse = (text: string, pictures: PictureFiles = new Map()): ProsePart[] =>
  isTangled(text)
    ? [{ kind: 'code', text }]
    : blocksOf(text).flatMap((node) => (node.type === 'paragraph' ? paragraphs(node.children, pictures) : block(node)));

/** What the pictures of a prose cell are called, as written. */
export const pictureSources = (text: string): string[] =>
  isTangled(text)
    ? []
    : blocksOf(text).flatMap((node) =>
        node.type === 'paragraph' ? node.children.flatMap((child) => (child.type === 'image' ? [child.url] : [])) : [],
      );

const blocksOf = (text: string): RootContent[] =>
  fromMarkdown(text, {
    extensions: [frontmatter(['yaml']), gfm()],
    mdastExtensions: [frontmatterFromMarkdown(['yaml']), gfmFromMarkdown()],
  }).children;

/** Pictures stand between the paragraphs that the words around them make. */
function paragraphs(nodes: readonly PhrasingContent[], pictures: PictureFiles): Part[] {
  const parts: Part[] = [];
  let from = 0;
  const endParagraph = (at: number) => {
    const content = inlines(nodes.slice(from, at));
    if (plain(content).trim() !== '') {
      parts.push({ kind: 'paragraph', content });
    }
    from = at + 1;
  };
  for (const [at, node] of nodes.entries()) {
    if (node.type === 'image') {
      endParagraph(at);
      parts.push(picturePart(node.alt ?? '', node.url, pictures));
    }
  }
  endParagraph(nodes.length);
  return parts;
}

function block(node: RootContent): ProsePart[] {
  switch (node.type) {
    case 'heading':
      return [{ kind: 'heading', depth: node.depth, content: inlines(node.children) }];
    case 'paragraph':
      return [{ kind: 'paragraph', content: inlines(node.children) }];
    case 'blockquote':
      return [{ kind: 'quote', parts: inner(node.children) }];
    case 'list':
      return [
        {
          kind: 'list',
          ordered: node.ordered === true,
          items: node.children.map((item) => ticked(item.checked, inner(item.children))),
        },
      ];
    case 'code':
      return [{ kind: 'code', text: node.value }];
    case 'table':
      return [table(node)];
    case 'html':
      return /^<!--[\s\S]*-->$/.test(node.value.trim()) ? [] : [{ kind: 'code', text: node.value }];
    case 'footnoteDefinition':
      return inner(node.children);
    default:
      return []; // A rule, a link's definition, front matter: nothing to say on paper.
  }
}

/** Inside a list or a quotation a heading is a strong line. */
const inner = (nodes: readonly RootContent[]): Part[] =>
  nodes.flatMap(block).map((part) =>
    part.kind === 'heading'
      ? {
          kind: 'paragraph',
          content: part.content.map(
            (inline): Inline => (inline.kind === 'text' ? { ...inline, style: 'strong' } : inline),
          ),
        }
      : part,
  );

function ticked(checked: boolean | null | undefined, parts: Part[]): Part[] {
  const [first, ...rest] = parts;
  if (typeof checked !== 'boolean' || first?.kind !== 'paragraph') {
    return parts;
  }
  return [{ ...first, content: [{ kind: 'text', text: checked ? '☑ ' : '☐ ' }, ...first.content] }, ...rest];
}

function table(node: TableNode): Part {
  const [head, ...rows] = node.children.map((row) => row.children.map((cell) => inlines(cell.children)));
  const columns = head.map((content, i) => ({
    title: content.map((inline) => ('text' in inline ? inline.text : ' ')).join(''),
    ...(node.align?.[i] === 'right' && { align: 'right' as const }),
  }));
  const filled = rows.map((row) => head.map((_, i) => row[i] ?? []));
  return { kind: 'table', columns: fittedColumns(columns, filled), rows: filled };
}

type Style = (Inline & { kind: 'text' })['style'];

function inlines(nodes: readonly PhrasingContent[], style?: Style): Inline[] {
  return nodes.flatMap((node) => inline(node, style));
}

function inline(node: PhrasingContent, style: Style): Inline[] {
  switch (node.type) {
    case 'text':
      return [styled(node.value.replace(/\s*\n\s*/g, ' '), style)];
    case 'strong':
      return inlines(node.children, 'strong');
    case 'emphasis':
      return inlines(node.children, style ?? 'emphasis');
    case 'delete':
      return inlines(node.children, style);
    case 'inlineCode':
      return [styled(node.value, 'code')];
    case 'break':
      return [{ kind: 'break' }];
    case 'link':
      return [{ kind: 'link', text: textOf(node.children) || node.url, target: node.url }];
    case 'linkReference':
      return inlines(node.children, style);
    case 'image':
      return [styled(`[picture: ${node.alt || node.url}]`, style)];
    case 'imageReference':
      return [styled(`[picture: ${node.alt || node.label || ''}]`, style)];
    case 'footnoteReference':
      return [styled(`[${node.label ?? node.identifier}]`, style)];
    case 'html':
      return node.value.startsWith('<!--') ? [] : [styled(node.value, style)];
  }
}

const styled = (text: string, style: Style): Inline => ({ kind: 'text', text, ...(style && { style }) });

const textOf = (nodes: readonly PhrasingContent[]): string =>
  inlines(nodes)
    .map((inline) => ('text' in inline ? inline.text : ' '))
    .join('');
