import { fromBase64 } from './base64';
import { closingOf, isFrontMatter, swallowsFence } from './closing';
import type { CellOrigin, FileOrigin, SheetCell } from './contract';
import { readFence, writeFence } from './fence';
import { withNewlines } from './lines';
import { markdownBlocks } from './markdown-blocks';
import { parting } from './split-cells';

/**
 * The bytes of a sheet. Untouched cells are written as they were read, so an untouched sheet is the same bytes and
 * an edit changes its own cell's bytes alone. A calculation cell that holds backticks gets a longer fence. A prose
 * cell is Markdown as typed: a `kft` fence in it is a calculation cell when the file is opened again, and a fence or
 * comment left open is closed where it would swallow the next cell. A file that was not editable is given back whole.
 */
export function writeSheet(given: readonly SheetCell[], origin: FileOrigin): Uint8Array {
  if (origin.bytes !== undefined) {
    return fromBase64(origin.bytes);
  }
  const cells = given.map((cell) => (isBlankProse(cell) ? { ...cell, text: '' } : cell));
  let text = '';
  let firstEnd = 0;
  for (let i = 0; i < cells.length; i++) {
    const [before, cell] = [cells[i - 1], cells[i]];
    const together = follows(before, cell);
    const behindHead = i === 1 && text.startsWith('---');
    // What stood between two cells that are still neighbours, and unchanged, is known to keep them apart.
    const newlyMet = before?.kind === 'prose' && !(together && isUntouched(before));
    if (newlyMet) {
      const closing = closingOf(withNewlines(before.text), behindHead);
      text += closing === '' ? '' : origin.lineEnd + closing;
    }
    text += leadOf(before, cell, behindHead, together, origin.lineEnd);
    text += bodyOf(cell, newlyMet ? withNewlines(before.text) : '', origin.lineEnd);
    firstEnd = i === 0 ? text.length : firstEnd;
  }
  text += originOf(cells.at(-1)) || cells.length === 0 ? origin.tail : origin.lineEnd;
  if (becomesFrontMatter(text, firstEnd)) {
    text = origin.lineEnd + text;
  }
  const bytes = new TextEncoder().encode(text);
  return origin.byteOrderMark ? Uint8Array.of(0xef, 0xbb, 0xbf, ...bytes) : bytes;
}

const isBlankProse = (cell: SheetCell): boolean => cell.kind === 'prose' && /^[ \t\r\n]*$/.test(cell.text);

/** The cell's origin while it is still of the kind that was read. */
const originOf = (cell: SheetCell | undefined): CellOrigin | undefined =>
  cell?.origin?.kind === cell?.kind ? cell?.origin : undefined;

const isUntouched = (cell: SheetCell): boolean => originOf(cell)?.text === cell.text;

/** True when the cell comes right behind the same one as in the file it was read from. */
function follows(before: SheetCell | undefined, cell: SheetCell): boolean {
  const order = originOf(cell)?.order;
  return order !== undefined && (before ? originOf(before)?.order === order - 1 : order === 0);
}

/** What parts a cell from the one before it: as it was where that still holds, else one blank line. */
function leadOf(
  before: SheetCell | undefined,
  cell: SheetCell,
  behindHead: boolean,
  together: boolean,
  lineEnd: string,
): string {
  const bothProse = before?.kind === 'prose' && cell.kind === 'prose';
  const needsParting = bothProse
    ? cell.text === '' || !(behindHead && isFrontMatter(withNewlines(before.text)))
    : cell.kind === 'prose' && cell.text === '';
  const read = originOf(cell);
  const lead = read?.slice.slice(0, read.body) ?? '';
  const hasParting = lead.includes(parting);
  const separates = before?.kind !== 'prose' || /^[ \t]*(\r\n|\r(?!\n)|\n)[ \t]*[\r\n]/.test(lead);
  const asBefore = together && (isUntouched(before ?? cell) || separates) && (hasParting || !needsParting);
  if (asBefore || (before && lead !== '' && separates && startsOnNewLine(lead) && hasParting === needsParting)) {
    return cell.text !== '' && lead.trimEnd().endsWith(parting) && !/[\r\n][ \t]*$/.test(lead)
      ? lead + lineEnd + lineEnd // An empty cell that got text: the comment was the last thing on its line.
      : lead;
  }
  const blank = before ? lineEnd + lineEnd : '';
  return !needsParting ? blank : cell.text === '' ? blank + parting : blank + parting + lineEnd + lineEnd;
}

const startsOnNewLine = (lead: string): boolean => /^[ \t]*[\r\n]/.test(lead);

/** True when a first line `---` would make front matter of all up to the next such line in a later cell. */
const becomesFrontMatter = (text: string, firstEnd: number): boolean => {
  const [first] = text.startsWith('---') ? markdownBlocks(text) : [];
  return first?.type === 'yaml' && first.end > firstEnd;
};

/** A cell's own bytes. An indented fence moves to the margin where a list in `prose` before it would take it in. */
function bodyOf(cell: SheetCell, prose: string, lineEnd: string): string {
  const read = originOf(cell);
  const source = read?.slice.slice(read.body);
  const fence = source !== undefined && cell.kind === 'calculation' ? readFence(source) : undefined;
  const taken = fence !== undefined && fence.indent > 0 && prose !== '' && swallowsFence(prose, fence.indent);
  if (source !== undefined && read?.text === cell.text && !taken) {
    return source;
  }
  const text = withNewlines(cell.text);
  const written = cell.kind === 'prose' ? text : writeFence(text, taken ? { ...fence, indent: 0 } : fence);
  return written.replaceAll('\n', /\r\n|\n/.exec(source ?? '')?.[0] ?? lineEnd);
}
