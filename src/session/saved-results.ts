import { type Block, toText } from '../display';
import { staleResultLint } from '../lints';
import { newerFormatIn, readFrontMatter, resultBlock, savedResultIn, withSavedResults } from '../notebook';
import type { Diagnostic } from '../text';
import type { SheetEvaluation } from './evaluate-sheet';

/** What a cell shows, as it is written to the file: plain text, whatever the width of any window. */
const savedText = (blocks: readonly Block[]): string =>
  toText(blocks)
    .split('\n')
    .map((line) => line.trimEnd())
    .join('\n');

/** The file with the results of each cell in a block behind it; undefined where nothing may be written to it, as in one of a later format. */
export function writeResults({ file, text, cells }: SheetEvaluation): Uint8Array | undefined {
  const newer = cells.length > 0 && newerFormatIn(readFrontMatter(cells[0].cell.text));
  if (!file.editable || newer) {
    return undefined;
  }
  const results = cells.flatMap(({ cell, blocks }) => (cell.kind === 'calculation' ? [savedText(blocks)] : []));
  const bytes = new TextEncoder().encode(withSavedResults(text, results));
  return file.origin.byteOrderMark ? Uint8Array.of(0xef, 0xbb, 0xbf, ...bytes) : bytes;
}

/** How a sheet's cells change for their results to stand behind them: a prose cell with another text, or a new one. */
export interface SavedEdit {
  /** The index of the calculation cell. */
  readonly cell: number;
  /** The text of the prose cell behind it; `isNew` where there is none yet. */
  readonly prose: string;
  readonly isNew: boolean;
}

/** The same as `writeResults` for cells that are being edited. `results` gives what a calculation cell shows. */
export function savedEdits(
  cells: readonly { readonly kind: 'prose' | 'calculation'; readonly text: string }[],
  results: (index: number) => readonly Block[],
): SavedEdit[] {
  return cells.flatMap(({ kind }, cell): SavedEdit[] => {
    const next = cells[cell + 1]?.kind === 'prose' ? cells[cell + 1].text : undefined;
    const result = kind === 'calculation' ? savedText(results(cell)) : '';
    const saved = next === undefined ? undefined : savedResultIn(next);
    if (kind === 'prose' || (result === '' ? !saved : saved?.text === result)) {
      return [];
    }
    const rest = next === undefined ? '' : saved ? next.slice(saved.span.end).trimStart() : next;
    const prose = [...(result === '' ? [] : [resultBlock(result)]), ...(rest === '' ? [] : [rest])].join('\n\n');
    return [{ cell, prose, isNew: next === undefined }];
  });
}

/** Says of results that begin a prose cell that the calculation before it shows something else by now. */
export function staleResult(prose: string, blocks: readonly Block[]): Diagnostic | undefined {
  const saved = savedResultIn(prose);
  if (!saved || saved.text === savedText(blocks)) {
    return undefined;
  }
  const end = prose.indexOf('\n', saved.span.start);
  return {
    code: staleResultLint.id,
    severity: staleResultLint.severity,
    span: { start: saved.span.start, end: end < 0 ? prose.length : end },
    message:
      'These saved results are no longer what the calculation above comes to. Write them again (`kilofoot run --write`), or take the block out.',
  };
}
