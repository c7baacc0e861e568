import { toBase64 } from './base64';
import type { SheetFile } from './contract';
import { decodeText } from './decode-text';
import { usualLineEnd, withNewlines } from './lines';
import { splitCells } from './split-cells';

/**
 * Reads a sheet file of any bytes. A top-level fence marked `kft` is a calculation cell; all between is prose, the
 * front matter a prose cell of its own with its `---` lines. Blank lines around a cell are not part of its text.
 * A file that is no sheet (not UTF-8, zero bytes, conflict markers, too large) is one prose cell, not editable; its
 * bytes ride along and `writeSheet` gives them back whatever the cells then hold.
 */
export function readSheet(bytes: Uint8Array): SheetFile {
  const { text, byteOrderMark, refusal } = decodeText(bytes);
  const lineEnd = usualLineEnd(text);
  if (refusal) {
    const shown = withNewlines(text);
    return {
      cells: [{ kind: 'prose', text: shown, origin: { slice: text, text: shown, kind: 'prose', body: 0, order: 0 } }],
      origin: { tail: '', lineEnd, byteOrderMark, bytes: toBase64(bytes) },
      notices: [refusal],
      editable: false,
    };
  }
  const { cells, tail, notices } = splitCells(text);
  return { cells, origin: { tail, lineEnd, byteOrderMark }, notices, editable: true };
}
