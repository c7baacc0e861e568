import { type Drawing, drawingAddress } from '../drawing';
import { escapeHtml, escapeMarkdown, messageMarkdown } from './escape';
import type { Block } from './output';
import { verdictWords } from './verdict-words';

/** Groups with more lines than this are folded. */
const longGroup = 3;

/** What Markdown has no words for, in the order of its places in the text. */
export interface MarkdownExtras {
  readonly drawings: Drawing[];
  /** Of every table: whether its rows may be sorted, and whether the last of them holds totals, which stay where they are. */
  readonly tables: { readonly sortable: boolean; readonly totalled: boolean }[];
}

/**
 * Blocks as Markdown, with typeset formulas. Text from the sheet cannot become markup. A host that draws hands in `extras`
 * to be filled; without them pictures are told in words.
 */
export const toMarkdown = (blocks: readonly Block[], extras?: MarkdownExtras): string =>
  blocks.map((block) => blockMarkdown(block, extras)).join('\n\n');

function blockMarkdown(block: Block, extras: MarkdownExtras | undefined): string {
  switch (block.kind) {
    case 'maths':
      // Inline, so that a step starts at the margin, takes one line, and breaks at its equals signs where it is narrow.
      return `$\\displaystyle ${block.latex}$${block.remark ? ` — *${messageMarkdown(block.remark)}*` : ''}`;
    case 'lookup': {
      const row = block.row.map(([column, cell]) => `${escapeMarkdown(column)} ${escapeMarkdown(cell)}`).join(' · ');
      const source = escapeMarkdown(block.source) + (block.fromMemory ? ', value from memory' : '');
      return `$${block.latex}$ — ${source}${row && `: ${row}`}`;
    }
    case 'choice':
      return `${messageMarkdown(block.text)} — ${messageMarkdown(block.because)}`;
    case 'assumption':
      return `Assumed: ${messageMarkdown(block.text)}`;
    case 'verdict':
      return verdictMarkdown(block);
    case 'table':
      extras?.tables.push({ sortable: block.sortable === true, totalled: block.totalled === true });
      return tableMarkdown(block);
    case 'drawing':
      return extras
        ? [
            `![${escapeMarkdown(block.text)}](${drawingAddress}${extras.drawings.push(block.drawing) - 1})`,
            ...(block.caption === undefined ? [] : [`*${escapeMarkdown(block.caption)}*`]),
          ].join('\n\n')
        : `*${escapeMarkdown(block.text)}*`;
    case 'group':
      return groupMarkdown(block, extras);
    case 'missing':
      return `${block.name === undefined ? 'This line' : `\`${block.name}\``} ${messageMarkdown(block.text)}.`;
  }
}

function verdictMarkdown({ verdict, label, text, latex, margin, advice }: Block & { kind: 'verdict' }): string {
  const notes = [margin, advice].filter((note) => note !== undefined).map((note) => ` — ${messageMarkdown(note)}`);
  return `**${verdictWords[verdict]}** — ${label === text ? '' : `${escapeMarkdown(label)}: `}$${latex}$${notes.join('')}`;
}

const tableMarkdown = ({ head, rows, numeric }: Block & { kind: 'table' }): string =>
  [head, head.map((_, column) => (numeric?.[column] ? '---:' : '---')), ...rows]
    .map((row, i) => `| ${row.map((cell) => (i === 1 ? cell : escapeMarkdown(cell))).join(' | ')} |`)
    .join('\n');

function groupMarkdown({ title, blocks }: Block & { kind: 'group' }, extras: MarkdownExtras | undefined): string {
  const inside = toMarkdown(blocks, extras);
  return blocks.length > longGroup
    ? `<details><summary>${escapeHtml(title)}</summary>\n\n${inside}\n\n</details>`
    : `**${escapeMarkdown(title)}**${inside && `\n\n${inside}`}`;
}
