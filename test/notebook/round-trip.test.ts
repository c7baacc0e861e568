import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readSheet, type SheetCell, writeSheet } from '../../src/notebook';
import { cellText, markdownish, newCell, textOfBytes, utf8 } from './sheet-arbitraries';

/** Reading Markdown takes most of the time; more runs found nothing more. */
const runs = 150;

const reopened = (cells: readonly SheetCell[], from: Uint8Array) =>
  readSheet(writeSheet(cells, readSheet(from).origin));
const shown = (cells: readonly SheetCell[]) => cells.map(({ kind, text }) => ({ kind, text }));

/** What comes back of a prose cell's text: blank lines at its ends are not part of it. */
const trimmed = (text: string) =>
  text
    .replace(/^([ \t]*\n)+/, '')
    .replace(/(\n[ \t]*)+$/, '')
    .replace(/^[ \t]+$/, '');

/** Prose that stays one cell: no cell fence, no parting comment, nothing left open, no front matter. */
function staysOneCell({ text, kind }: SheetCell, index: number): boolean {
  if (kind === 'calculation') {
    return true;
  }
  const { cells } = readSheet(utf8(`${index === 0 ? '' : '\n'}${text}\n\n\`\`\`kft\n\`\`\`\n`));
  return trimmed(text) === ''
    ? true
    : cells.length === 2 && cells[0].kind === 'prose' && cells[0].text === trimmed(text) && cells[1].text === '';
}

describe('a sheet that was read and not touched', () => {
  it('is written as the same bytes, whatever bytes they are', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const file = readSheet(bytes);
        assert.deepEqual(writeSheet(file.cells, file.origin), bytes);
      }),
      { numRuns: 500 },
    );
  });

  it('is written as the same bytes when it looks like Markdown, with any mix of line ends', () => {
    fc.assert(
      fc.property(markdownish, fc.boolean(), (text, mark) => {
        fc.pre(!text.startsWith('\uFEFF')); // It would be the file's own mark.
        const bytes = utf8((mark ? '\uFEFF' : '') + text);
        const file = readSheet(bytes);
        assert.equal(textOfBytes(writeSheet(file.cells, file.origin)), textOfBytes(bytes));
        assert.equal(file.cells.map((cell) => cell.origin!.slice).join('') + file.origin.tail, text);
      }),
      { numRuns: runs },
    );
  });

  it('survives the JSON that editors keep origins in', () => {
    for (const bytes of [utf8('\uFEFFa\r\n\r\n```kft\r\nx = 1\r\n```'), Uint8Array.of(0x61, 0xff, 0x0a), utf8('')]) {
      const file = JSON.parse(JSON.stringify(readSheet(bytes)));
      assert.deepEqual(writeSheet(file.cells, file.origin), bytes);
    }
  });
});

describe('an edit of one cell', () => {
  it('changes the bytes of that cell alone', () => {
    fc.assert(
      fc.property(markdownish, markdownish, fc.nat(), cellText, (head, rest, choice, text) => {
        const file = readSheet(utf8(`# Sheet\n${head}\n\n\`\`\`kft\nx = 1\n\`\`\`\n${rest}`));
        const calculations = file.cells.filter((other) => other.kind === 'calculation');
        fc.pre(calculations.length > 0); // What stands before may leave a fence open.
        const cell = calculations[choice % calculations.length];
        const at = file.cells.indexOf(cell);
        const cells = file.cells.map((other, i) => (i === at ? { ...other, text } : other));
        const written = textOfBytes(writeSheet(cells, file.origin));
        const slices = file.cells.map((other) => other.origin!.slice);
        const before = slices.slice(0, at).join('') + cell.origin!.slice.slice(0, cell.origin!.body);
        const after = slices.slice(at + 1).join('') + file.origin.tail;
        assert.ok(written.startsWith(before), JSON.stringify({ written, before }));
        assert.ok(written.endsWith(after), JSON.stringify({ written, after }));
        assert.deepEqual(shown(readSheet(utf8(written)).cells), shown(cells));
      }),
      { numRuns: runs },
    );
  });
});

describe('cells as a person leaves them', () => {
  const arranged = fc
    .tuple(markdownish, fc.array(fc.oneof(fc.nat(), newCell), { maxLength: 6 }), fc.nat(), fc.option(cellText))
    .map(([source, parts, editAt, edit]) => {
      const file = readSheet(utf8(source));
      const cells = parts
        .map((part) => (typeof part === 'number' ? file.cells[part % Math.max(1, file.cells.length)] : part))
        .filter((cell) => cell !== undefined);
      const edited = cells.map((cell, i) =>
        edit !== null && i === editAt % cells.length ? { ...cell, text: edit } : cell,
      );
      return { source, cells: edited };
    });

  it('read back as the same cells after any insertion, deletion, move and edit', () => {
    fc.assert(
      fc.property(arranged, ({ source, cells }) => {
        fc.pre(readSheet(utf8(source)).editable && cells.every(staysOneCell));
        const again = reopened(cells, utf8(source));
        const expected = cells.map((cell) => (cell.kind === 'prose' ? { ...cell, text: trimmed(cell.text) } : cell));
        assert.deepEqual(shown(again.cells), shown(expected));
      }),
      { numRuns: runs },
    );
  });

  it('keep every calculation cell, whatever the prose between them leaves open', () => {
    fc.assert(
      fc.property(arranged, ({ source, cells }) => {
        fc.pre(readSheet(utf8(source)).editable);
        const wanted = cells.filter((cell) => cell.kind === 'calculation').map((cell) => cell.text);
        const again = reopened(cells, utf8(source)).cells.filter((cell) => cell.kind === 'calculation');
        const found = again.map((cell) => cell.text);
        let at = 0;
        for (const text of wanted) {
          at = found.indexOf(text, at) + 1;
          assert.notEqual(at, 0, JSON.stringify({ text, found }));
        }
      }),
      { numRuns: runs },
    );
  });
});

describe('two cells that did not stand together before', () => {
  it('are kept apart where the first ends in open HTML and the lead of the second is one line end', () => {
    const [cell] = readSheet(utf8('\r\n```\tkft\n````')).cells;
    const again = reopened([{ kind: 'prose', text: '</div>' }, cell], utf8(''));
    assert.deepEqual(
      again.cells.map((other) => other.kind),
      ['prose', 'calculation'],
    );
  });

  it('are kept apart where a list would take in an indented fence', () => {
    const [cell] = readSheet(utf8('  ```kft\n  x = 1\n  ```\n')).cells;
    const again = reopened([{ kind: 'prose', text: '- item' }, cell], utf8(''));
    assert.deepEqual(
      again.cells.map((other) => other.text),
      ['- item', 'x = 1'],
    );
  });
});
