import type { Block } from './output';
import { textLatex } from './text-latex';

/** Blocks as LaTeX, one formula a line, for a paper that is typeset elsewhere. What is words stands in `\text`. */
export const toLatex = (blocks: readonly Block[]): string => blocks.map(blockLatex).filter(Boolean).join('\n');

function blockLatex(block: Block): string {
  switch (block.kind) {
    case 'maths':
    case 'lookup':
      return `\\[ ${block.latex} \\]`;
    case 'verdict': {
      const label = block.label === block.text ? '' : `${textLatex(`${block.label}: `)} `;
      return `\\[ ${label}${block.latex} \\quad ${textLatex(`(${block.verdict})`)} \\]`;
    }
    case 'table':
      return tableLatex(block);
    case 'group':
      return toLatex(block.blocks);
    case 'choice':
      return `\\[ ${textLatex(`${block.text}, ${block.because}`)} \\]`;
    case 'assumption':
      return `\\[ ${textLatex(`Assumed: ${block.text}`)} \\]`;
    case 'drawing':
      return `\\[ ${textLatex(block.text)} \\]`;
    case 'missing':
      return `\\[ ${textLatex(`${block.name ?? 'This line'} ${block.text}.`)} \\]`;
  }
}

function tableLatex({ head, rows, numeric }: Block & { kind: 'table' }): string {
  const columns = head.map((_, column) => (numeric?.[column] ? 'r' : 'l')).join('');
  const lines = [head, ...rows].map((row) => `${row.map((cell) => textLatex(cell)).join(' & ')} \\\\`);
  return `\\[ \\begin{array}{${columns}}\n${[lines[0], '\\hline', ...lines.slice(1)].join('\n')}\n\\end{array} \\]`;
}
