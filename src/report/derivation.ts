import type { Block } from '../display';
import { message, type Part, textTable, words } from './document';

/** What a calculation cell shows, as parts of a report. */
export const derivationParts = (blocks: readonly Block[]): Part[] => blocks.flatMap(partsOf);

function partsOf(block: Block): Part[] {
  switch (block.kind) {
    case 'maths': {
      const { latex, text, remark } = block;
      return [{ kind: 'step', latex, text, ...(remark && { note: remark }) }];
    }
    case 'lookup': {
      const { latex, text, source, fromMemory, row } = block;
      const cells = row.map(([column, cell]) => `${column} ${cell}`).join(' · ');
      const note = source + (fromMemory ? ', value from memory' : '') + (cells && `: ${cells}`);
      return [{ kind: 'step', latex, text, note }];
    }
    case 'choice':
      return [{ kind: 'paragraph', content: message(`${block.text} — ${block.because}`) }];
    case 'assumption':
      return [{ kind: 'paragraph', content: [...words('Assumed: ', 'emphasis'), ...words(block.text)] }];
    case 'verdict': {
      const { verdict, label, latex, text, margin, advice } = block;
      const notes = [margin, advice].filter((note) => note !== undefined);
      return [{ kind: 'verdict', verdict, label: label === text ? '' : label, latex, text, notes }];
    }
    case 'table':
      return [
        textTable(
          block.head.map((title) => ({ title })),
          block.rows,
        ),
      ];
    case 'group':
      return [{ kind: 'group', title: block.title, parts: derivationParts(block.blocks) }];
    case 'missing':
      return [
        {
          kind: 'paragraph',
          content: [...words('No result: ', 'strong'), ...words(`${block.name ?? 'this line'} ${block.text}.`)],
        },
      ];
  }
}
