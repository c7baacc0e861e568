import type { Block, OtherSheet } from '../display';
import { fittedColumns } from './column-widths';
import { type Inline, message, type Part, type Table, textTable, words } from './document';

/** What a calculation cell shows, as parts of a report. */
export const derivationParts = (blocks: readonly Block[]): Part[] => blocks.flatMap(partsOf);

function partsOf(block: Block): Part[] {
  switch (block.kind) {
    case 'maths': {
      const { latex, text, remark, from } = block;
      return [{ kind: 'step', latex, text, ...(remark && { note: linked(remark, from) }) }];
    }
    case 'lookup': {
      const { latex, text, source, fromMemory, row } = block;
      const cells = row.map(([column, cell]) => `${column} ${cell}`).join(' · ');
      const note = source + (fromMemory ? ', value from memory' : '') + (cells && `: ${cells}`);
      return [{ kind: 'step', latex, text, note: message(note) }];
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
      return [{ kind: 'group', title: linked(block.title, block.from), parts: derivationParts(block.blocks) }];
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

/** A text with a link where it names another sheet. */
function linked(text: string, from: OtherSheet | undefined): Inline[] {
  const at = from ? text.lastIndexOf(from.name) : -1;
  return from && from.path !== '' && at >= 0
    ? [
        ...words(text.slice(0, at)),
        { kind: 'file', text: from.name, target: reference(from.path) },
        ...words(text.slice(at + from.name.length)),
      ]
    : message(text);
}

/** A way between files as a relative reference, in which no sign has another meaning (RFC 3986, 4.2). */
const reference = (path: string): string =>
  path
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .split('/')
    .map((part) => encodeURIComponent(part).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`))
    .join('/');
