import type { Block } from '../display';
import { fittedColumns } from './column-widths';
import { message, type Part, type Table, textTable, words } from './document';

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
      return [{ kind: 'paragraph', content: [...words('Assumed: ', 'emphasis'), ...message(block.text)] }];
    case 'verdict': {
      const { verdict, label, latex, text, margin, advice } = block;
      const notes = [margin, advice].filter((note) => note !== undefined);
      return [{ kind: 'verdict', verdict, label: label === text ? '' : label, latex, text, notes }];
    }
    case 'table':
      return [tableOf(block)];
    case 'drawing':
      return [block];
    case 'group':
      return [{ kind: 'group', title: block.title, parts: derivationParts(block.blocks) }];
    case 'missing':
      return [
        {
          kind: 'paragraph',
          content: [...words('No result: ', 'strong'), ...message(`${block.name ?? 'this line'} ${block.text}.`)],
        },
      ];
  }
}

/** A schedule's totals are set apart, so that a paged writer can repeat them. */
function tableOf({ head, rows, numeric = [], totalled }: Block & { kind: 'table' }): Table {
  const columns = head.map((title, i) => ({ title, ...(numeric[i] && { align: 'right' as const }) }));
  const all = textTable(columns, rows);
  const fitted = { ...all, columns: fittedColumns(columns, all.rows) };
  return totalled ? { ...fitted, rows: all.rows.slice(0, -1), totals: all.rows.slice(-1) } : fitted;
}
