import { escapeMarkdown, messageMarkdown, verdictWords } from '../display';
import { type Cell, type Inline, message, type Part, type ReportDocument, type Table } from './document';

/** The report as Markdown with `$…$` maths, for a code host, an issue or an editor. */
export function writeMarkdown(document: ReportDocument): string {
  const { kind, title, fields, banners, sections } = document;
  const blocks = [
    `# ${escapeMarkdown(title)}`,
    `**${escapeMarkdown(kind)}**`,
    tableText(
      ['', ''],
      fields.map(([label, text]) => [`**${escapeMarkdown(label)}**`, escapeMarkdown(text)]),
    ),
    ...banners.map(
      ({ title: what, items }) =>
        `> **⚠ ${escapeMarkdown(what)}**\n>\n${items.map((item) => `> - ${messageMarkdown(item)}`).join('\n')}`,
    ),
    ...sections.flatMap((section) => [`## ${escapeMarkdown(section.title)}`, partsText(section.parts)]),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

const partsText = (parts: readonly Part[]): string => parts.map(partText).join('\n\n');

function partText(part: Part): string {
  switch (part.kind) {
    case 'heading':
      return `${'#'.repeat(part.depth)} ${inlineText(part.content)}`;
    case 'paragraph':
      return inlineText(part.content);
    case 'list':
      return part.items.map((item, i) => indented(partsText(item), part.ordered ? `${i + 1}. ` : '- ')).join('\n');
    case 'quote':
      return partsText(part.parts).replace(/^/gm, '> ').replace(/^> $/gm, '>');
    case 'code':
      return fenced(part.text);
    case 'table':
      return markdownTable(part);
    case 'step':
      return `$\\displaystyle ${part.latex}$${part.note ? ` — ${part.note.map(noted).join('')}` : ''}`;
    case 'verdict': {
      const label = part.label && `${escapeMarkdown(part.label)}: `;
      const notes = part.notes.map((note) => ` — ${inlineText(message(note))}`).join('');
      return `**${verdictWords[part.verdict]}** — ${label}$${part.latex}$${notes}`;
    }
    case 'drawing':
      return `*${escapeMarkdown(part.text)}*`;
    case 'picture':
      return `![${escapeMarkdown(part.alt)}](<${part.source.replace(/[<>\n]/g, encodeURIComponent)}>)`;
    case 'group':
      return [part.title.map(titled).join(''), partsText(part.parts)].filter(Boolean).join('\n\n');
    case 'signatures':
      return tableText(
        ['', 'Name', 'Signature', 'Date'],
        part.lines.map(({ role, name }) => [role, escapeMarkdown(name), '', '']),
      );
  }
}

const inlineText = (content: readonly Inline[]): string => content.map(oneInline).join('');

function oneInline(inline: Inline): string {
  switch (inline.kind) {
    case 'break':
      return '\\\n';
    case 'maths':
      return `$${inline.latex}$`;
    case 'verdict':
      return `**${inline.text}**`;
    case 'link':
      return `[${escapeInline(inline.text)}](<${inline.target.replace(/[<>\n]/g, encodeURIComponent)}>)`;
    case 'file':
      return `[${escapeInline(inline.text)}](${inline.target})`;
    case 'text':
      return styled(inline);
  }
}

/** A note's words lean, a title's are strong; code and links stand as they are. */
const noted = (inline: Inline): string =>
  oneInline(inline.kind === 'text' && !inline.style ? { ...inline, style: 'emphasis' } : inline);
const titled = (inline: Inline): string =>
  oneInline(inline.kind === 'text' && !inline.style ? { ...inline, style: 'strong' } : inline);

/** Emphasis marks stand on the words, outside of them the space around. */
function styled({ text, style }: Inline & { kind: 'text' }): string {
  if (style === 'code') {
    const fence = '`'.repeat(Math.max(0, ...(text.match(/`+/g) ?? []).map((run) => run.length)) + 1);
    return fence.length > 1 ? `${fence} ${text} ${fence}` : `${fence}${text}${fence}`;
  }
  const escaped = escapeInline(text);
  const mark = style === 'strong' ? '**' : style === 'emphasis' ? '*' : '';
  return mark && escaped.trim() ? escaped.replace(/^(\s*)([\s\S]*?)(\s*)$/, `$1${mark}$2${mark}$3`) : escaped;
}

/** Escaped, with the space at its ends kept: the neighbours are words. */
const escapeInline = (text: string): string => {
  const [, before, inner, after] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text)!;
  return before + escapeMarkdown(inner) + after;
};

const markdownTable = ({ columns, rows, totals = [] }: Table): string => {
  const cell = (content: Cell) => inlineText(content).replaceAll('\\\n', ' ');
  const strong = (content: Cell) => (content.length > 0 ? `**${cell(content)}**` : '');
  return tableText(
    columns.map(({ title }) => escapeMarkdown(title)),
    [...rows.map((row) => row.map(cell)), ...totals.map((row) => row.map(strong))],
    columns.map(({ align }) => (align === 'right' ? '--:' : '---')),
  );
};

const tableText = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  rule: readonly string[] = head.map(() => '---'),
): string => [head, rule, ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

const indented = (text: string, mark: string): string =>
  mark + text.replace(/\n(?=[^\n])/g, `\n${' '.repeat(mark.length)}`);

function fenced(text: string): string {
  const longest = Math.max(2, ...(text.match(/`+/g) ?? []).map((run) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}\n${text}\n${fence}`;
}
