import type { Block } from './output';
import { oneLine } from './value';
import { verdictWords } from './verdict-words';

/** Colours for a terminal; each gets text and gives it back, painted. */
export interface Painter {
  readonly yes: (text: string) => string;
  readonly no: (text: string) => string;
  readonly doubt: (text: string) => string;
  readonly faint: (text: string) => string;
}

const plain: Painter = { yes: (t) => t, no: (t) => t, doubt: (t) => t, faint: (t) => t };

/** Blocks as plain text: for terminals, for copying and for screen readers. No escape codes unless a painter adds them. */
export const toText = (blocks: readonly Block[], { paint = plain }: { readonly paint?: Painter } = {}): string =>
  aligned(blocks)
    .flatMap((block) => blockLines(block, paint))
    .join('\n');

function blockLines(block: Block, paint: Painter): string[] {
  switch (block.kind) {
    case 'maths':
      return [block.text + (block.remark ? paint.faint(`  // ${oneLine(block.remark)}`) : '')];
    case 'lookup': {
      const row = block.row.map(([column, cell]) => `${column} ${cell}`).join(', ');
      const memory = block.fromMemory ? ', value from memory' : '';
      return [block.text + paint.faint(`  [${block.source}${memory}${row && `: ${row}`}]`)];
    }
    case 'choice':
      return [`${block.text}, ${oneLine(block.because)}`];
    case 'assumption':
      return [`Assumed: ${oneLine(block.text)}`];
    case 'verdict':
      return verdictLines(block, paint);
    case 'table':
      return tableLines(block);
    case 'drawing':
      return [`  ${oneLine(block.text)}`];
    case 'group':
      return [
        oneLine(block.title),
        ...toText(block.blocks, { paint })
          .split('\n')
          .filter(Boolean)
          .map((line) => `  ${line}`),
      ];
    case 'missing':
      return [`${block.name ?? 'This line'} ${oneLine(block.text)}.`];
  }
}

function verdictLines({ verdict, label, text, margin, advice }: Block & { kind: 'verdict' }, paint: Painter): string[] {
  const painted = { yes: paint.yes, no: paint.no, 'cannot tell': paint.doubt }[verdict](verdictWords[verdict]);
  const line = `${painted}  ${label === text ? '' : `${oneLine(label)}: `}${text}${margin === undefined ? '' : ` (${margin})`}`;
  return advice === undefined ? [line] : [line, `  ${oneLine(advice)}`];
}

const width = (text: string): number => [...text].length;

const padded = (text: string, to: number): string => text + ' '.repeat(Math.max(0, to - width(text)));

function tableLines({ head, rows, numeric }: Block & { kind: 'table' }): string[] {
  const cells = [head, ...rows].map((row) => row.map(oneLine));
  const widths = head.map((_, column) => Math.max(...cells.map((row) => width(row[column] ?? ''))));
  const lines = cells.map((row) =>
    row
      .map((cell, column) =>
        numeric?.[column] ? ' '.repeat(widths[column] - width(cell)) + cell : padded(cell, widths[column]),
      )
      .join('  ')
      .trimEnd(),
  );
  return [lines[0], widths.map((w) => '-'.repeat(w)).join('  '), ...lines.slice(1)];
}

/** Names this long would push their neighbours too far to the right. */
const longestAligned = 20;

/** Formulas that follow one another have their first equals signs under one another. */
function aligned(blocks: readonly Block[]): readonly Block[] {
  const names = blocks.map((block) => (block.kind === 'maths' ? (/^(\S+) = /.exec(block.text)?.[1] ?? '') : ''));
  const widths = names.map((name) => (name === '' ? 0 : width(name)));
  const shown = [...blocks];
  for (let first = 0; first < blocks.length; first++) {
    let end = first;
    let widest = 0;
    for (; end < blocks.length && names[end] !== ''; end++) {
      widest = widths[end] <= longestAligned ? Math.max(widest, widths[end]) : widest;
    }
    for (let i = first; i < end; i++) {
      const block = blocks[i];
      if (block.kind === 'maths' && widths[i] <= longestAligned) {
        shown[i] = { ...block, text: padded(names[i], widest) + block.text.slice(names[i].length) };
      }
    }
    first = end;
  }
  return shown;
}
