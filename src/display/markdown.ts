import { escapeHtml, escapeMarkdown } from './escape';
import type { Block } from './output';
import { verdictWords } from './verdict-words';

/** Groups with more lines than this are folded. */
const longGroup = 3;

/** Blocks as Markdown for notebook outputs, with typeset formulas. Text from the sheet cannot become markup. */
export const toMarkdown = (blocks: readonly Block[]): string => blocks.map(blockMarkdown).join('\n\n');

function blockMarkdown(block: Block): string {
  switch (block.kind) {
    case 'maths':
      // Inline, so that a step starts at the margin, takes one line, and breaks at its equals signs where it is narrow.
      return `$\\displaystyle ${block.latex}$${block.remark ? ` — *${escapeMarkdown(block.remark)}*` : ''}`;
    case 'lookup': {
      const row = block.row.map(([column, cell]) => `${escapeMarkdown(column)} ${escapeMarkdown(cell)}`).join(' · ');
      const source = escapeMarkdown(block.source) + (block.fromMemory ? ', value from memory' : '');
      return `$${block.latex}$ — ${source}${row && `: ${row}`}`;
    }
    case 'choice':
      return `${escapeMarkdown(block.text)} — ${escapeMarkdown(block.because)}`;
    case 'assumption':
      return `Assumed: ${escapeMarkdown(block.text)}`;
    case 'verdict':
      return verdictMarkdown(block);
    case 'table':
      return tableMarkdown(block);
    case 'drawing':
      return `*${escapeMarkdown(block.text)}*`;
    case 'group':
      return groupMarkdown(block);
    case 'missing':
      return `${block.name === undefined ? 'This line' : `\`${block.name}\``} ${escapeMarkdown(block.text)}.`;
  }
}

function verdictMarkdown({ verdict, label, text, latex, margin, advice }: Block & { kind: 'verdict' }): string {
  const notes = [margin, advice].filter((note) => note !== undefined).map((note) => ` — ${escapeMarkdown(note)}`);
  return `**${verdictWords[verdict]}** — ${label === text ? '' : `${escapeMarkdown(label)}: `}$${latex}$${notes.join('')}`;
}

const tableMarkdown = ({ head, rows, numeric }: Block & { kind: 'table' }): string =>
  [head, head.map((_, column) => (numeric?.[column] ? '---:' : '---')), ...rows]
    .map((row, i) => `| ${row.map((cell) => (i === 1 ? cell : escapeMarkdown(cell))).join(' | ')} |`)
    .join('\n');

function groupMarkdown({ title, blocks }: Block & { kind: 'group' }): string {
  const inside = toMarkdown(blocks);
  return blocks.length > longGroup
    ? `<details><summary>${escapeHtml(title)}</summary>\n\n${inside}\n\n</details>`
    : `**${escapeMarkdown(title)}**${inside && `\n\n${inside}`}`;
}
