import { applyEdits, type Edit, type Span } from '../text';
import { cellWord, readFence, writeFence } from './fence';
import { usualLineEnd, withNewlines } from './lines';
import { type MarkdownBlock, markdownBlocks } from './markdown-blocks';

/** The first info word of a block that holds a cell's results as they were written to the file. */
export const resultWord = `${cellWord}-result`;

/** Results saved at the beginning of a prose cell, right after the calculation that they are of. */
export interface SavedResult {
  /** The whole block in the cell's text. */
  readonly span: Span;
  /** What it says, lines ending with `\n`. */
  readonly text: string;
}

/** The results that a prose cell begins with; undefined where it begins with anything else. */
export function savedResultIn(prose: string): SavedResult | undefined {
  if (!prose.includes(resultWord)) {
    return undefined;
  }
  const [first] = markdownBlocks(prose);
  return first && savedResultAt(prose, first);
}

function savedResultAt(text: string, block: MarkdownBlock): SavedResult | undefined {
  const source = text.slice(block.start, block.end);
  const fence = block.type === 'code' ? readFence(source) : undefined;
  return fence?.closing && wordOf(fence.info) === resultWord
    ? {
        span: { start: block.start, end: block.end },
        text: fence.content.map((line) => source.slice(line.start, line.end)).join('\n'),
      }
    : undefined;
}

const wordOf = (info: string): string => info.trim().split(/\s/)[0];

/** A block of results, lines ending with `\n`. */
export const resultBlock = (text: string): string =>
  writeFence(text, { indent: 0, run: '```', info: resultWord, content: [] });

/**
 * A sheet's text with the results of each calculation cell in a block behind it. `results` are in the order of the
 * cells; a cell that shows nothing has no block. Whatever is no such block stays as it is.
 */
export function withSavedResults(text: string, results: readonly string[]): string {
  const blocks = markdownBlocks(text);
  const lineEnd = usualLineEnd(text);
  const edits: Edit[] = [];
  let at = 0;
  for (const [i, block] of blocks.entries()) {
    const fence = block.type === 'code' ? readFence(text.slice(block.start, block.end)) : undefined;
    if (!fence?.closing || wordOf(fence.info) !== cellWord) {
      continue;
    }
    const result = results[at++] ?? '';
    const next = blocks[i + 1];
    const saved = next && savedResultAt(text, next);
    const written = resultBlock(result).replaceAll('\n', lineEnd);
    if (saved && result === '') {
      edits.push({ span: { start: block.end, end: saved.span.end }, newText: '' });
    } else if (saved && withNewlines(saved.text) !== result) {
      edits.push({ span: saved.span, newText: written });
    } else if (!saved && result !== '') {
      edits.push({ span: { start: block.end, end: block.end }, newText: lineEnd + lineEnd + written });
    }
  }
  return applyEdits(text, edits);
}
