import type { Diagnostic } from '../text';
import type { SheetCell } from './contract';
import { cellWord, readFence } from './fence';
import { linesOf, withNewlines } from './lines';
import { type MarkdownBlock, markdownBlocks } from './markdown-blocks';

/** The comment line that parts two prose cells. */
export const parting = '<!-- cell -->';

export interface SplitSheet {
  readonly cells: readonly SheetCell[];
  readonly tail: string;
  readonly notices: readonly Diagnostic[];
}

/** Parts a sheet's text into cells. Slices and tail, joined, are the text again. */
export function splitCells(text: string): SplitSheet {
  const cells: SheetCell[] = [];
  const notices: Diagnostic[] = [];
  let at = 0;

  const add = (kind: SheetCell['kind'], content: string, body: number, end: number) => {
    const origin = { slice: text.slice(at, end), text: content, kind, body: body - at, order: cells.length };
    cells.push({ kind, text: content, origin });
    at = end;
  };
  /** Makes a cell of the prose up to `end`, if there is any; after a parting comment even an empty one counts. */
  const addProse = (from: number, end: number, parted: boolean) => {
    const lines = linesOf(text, from, end).filter((line) => /[^ \t]/.test(text.slice(line.start, line.end)));
    if (lines.length > 0) {
      const [start, stop] = [lines[0].start, lines.at(-1)!.end];
      add('prose', withNewlines(text.slice(start, stop)), start, stop);
    } else if (parted) {
      add('prose', '', from, from);
    }
  };

  let proseFrom = 0;
  let parted = false;
  for (const block of markdownBlocks(text)) {
    if (block.type === 'html' && text.slice(block.start, block.end).trim() === parting) {
      addProse(proseFrom, block.start, parted);
      parted = true;
    } else if (block.type === 'yaml') {
      addProse(block.start, block.end, false);
    } else {
      const fence = block.type === 'code' ? readFence(text.slice(block.start, block.end)) : undefined;
      if (fence && !fence.closing) {
        notices.push(...unclosedFence(text, block, fence.info));
      }
      if (!fence?.closing || !isCell(fence.info)) {
        continue;
      }
      addProse(proseFrom, block.start, parted);
      parted = false;
      const source = text.slice(block.start, block.end);
      const content = fence.content.map((line) => source.slice(line.start, line.end)).join('\n');
      add('calculation', content, block.start, block.end);
    }
    proseFrom = block.end;
  }
  addProse(proseFrom, text.length, parted);
  return { cells, tail: text.slice(at), notices };
}

/** The info word is `kft` alone or followed by further words, which are kept. */
const isCell = (info: string): boolean => info.trim().split(/\s/)[0] === cellWord;

/** An unclosed fence runs to the end of the file; it matters when it is, or swallows, a calculation cell. */
function unclosedFence(text: string, block: MarkdownBlock, info: string): Diagnostic[] {
  const swallowed = new RegExp(`^ {0,3}(\`{3,}|~{3,})[ \t]*${cellWord}\\b`, 'm');
  const firstLine = linesOf(text, block.start, block.end)[0];
  if (!isCell(info) && !swallowed.test(text.slice(firstLine.next, block.end))) {
    return [];
  }
  return [
    {
      code: 'unclosed-fence',
      severity: 'error',
      span: { start: firstLine.start, end: firstLine.end },
      message:
        'This fence is never closed, so all that follows is shown as text and nothing in it is evaluated. ' +
        'Close it with a line that holds the same fence and nothing else.',
    },
  ];
}
