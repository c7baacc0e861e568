import { format, parse } from '../language';
import { createLibrary } from '../library';
import { newerFormatIn, readFrontMatter, readSheet, writeSheet } from '../notebook';
import { applyEdits, type Diagnostic } from '../text';
import { readUnit } from '../units';

/**
 * A sheet with its calculation cells laid out tidily; every byte elsewhere stays. A file that is no sheet is not
 * touched, nor one in a later format than this: the problem says why.
 */
export function formatSheet(bytes: Uint8Array): { readonly bytes: Uint8Array } | { readonly problem: Diagnostic } {
  const file = readSheet(bytes);
  const library = createLibrary();
  if (!file.editable || 'problem' in library) {
    return { problem: file.notices[0] };
  }
  const newer = file.cells.length > 0 ? newerFormatIn(readFrontMatter(file.cells[0].text)) : undefined;
  if (newer) {
    return { problem: newer };
  }
  const cells = file.cells.map((cell) => {
    if (cell.kind === 'prose') {
      return cell;
    }
    const tree = parse(cell.text, library.vocabulary, { readUnit });
    return { ...cell, text: applyEdits(cell.text, format(tree)) };
  });
  return { bytes: writeSheet(cells, file.origin) };
}
