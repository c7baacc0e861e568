import assert from 'node:assert/strict';
import { readSheet, type SheetCell, writeSheet } from '../../src/notebook';
import { textOfBytes, utf8 } from './sheet-arbitraries';

/** The sheet after `change` worked on its cells. */
function changed(source: string, change: (cells: SheetCell[]) => SheetCell[]): string {
  const file = readSheet(utf8(source));
  return textOfBytes(writeSheet(change([...file.cells]), file.origin));
}

const prose = (text: string): SheetCell => ({ kind: 'prose', text });
const calculation = (text: string): SheetCell => ({ kind: 'calculation', text });
const sheet = '---\ntitle: Kiln\n---\n# Kiln\n\n\n~~~kft folded\nI = 5 A\n~~~\nend';

describe('writing a sheet', () => {
  it('parts new cells by a blank line, and touching prose by the comment', () => {
    const empty = readSheet(utf8('')).origin;
    const cells = [prose('# Kiln'), calculation('I = 5 A'), prose('One.'), prose('Two.')];
    assert.equal(
      textOfBytes(writeSheet(cells, empty)),
      '# Kiln\n\n```kft\nI = 5 A\n```\n\nOne.\n\n<!-- cell -->\n\nTwo.\n',
    );
  });

  it('changes an edited cell alone and keeps its fence', () => {
    assert.equal(
      changed(sheet, (cells) =>
        cells.map((cell) => (cell.kind === 'calculation' ? { ...cell, text: 'I = 6 A' } : cell)),
      ),
      sheet.replace('5 A', '6 A'),
    );
  });

  it('keeps what stands between cells that stay neighbours', () => {
    assert.equal(
      changed(sheet, (cells) => [...cells.slice(0, 3), calculation('P = 1 W'), ...cells.slice(3)]),
      sheet.replace('~~~\nend', '~~~\n\n```kft\nP = 1 W\n```\nend'),
    );
    assert.equal(
      changed(sheet, ([front, , ...rest]) => [front, ...rest]),
      '---\ntitle: Kiln\n---\n\n\n~~~kft folded\nI = 5 A\n~~~\nend',
    );
  });

  it('moves a cell with its bytes', () => {
    assert.equal(
      changed('a\n\n~~~kft\nx = 1\n~~~\n', ([first, second]) => [second, first]),
      '~~~kft\nx = 1\n~~~\n\na\n',
    );
  });

  it('writes the line end of the file', () => {
    assert.equal(
      changed('a\r\n\r\n```kft\r\nx = 1\r\n```\r\n', ([first, second]) => [
        first,
        { ...second, text: 'x = 1\ny = 2' },
        prose('b\nc'),
      ]),
      'a\r\n\r\n```kft\r\nx = 1\r\ny = 2\r\n```\r\n\r\nb\r\nc\r\n',
    );
  });

  it('makes the fence longer than any run of backticks in the cell', () => {
    const file = readSheet(utf8('```kft\nx = 1\n```\n'));
    const [cell] = file.cells;
    const written = writeSheet([{ ...cell, text: '// ````\n```\n' }], file.origin);
    assert.equal(textOfBytes(written), '`````kft\n// ````\n```\n\n`````\n');
    assert.equal(readSheet(written).cells[0].text, '// ````\n```\n');
  });

  it('closes what prose leaves open before the next cell', () => {
    for (const [open, closing] of [
      ['```python\nx', '```'],
      ['~~~~', '~~~~'],
      ['<!-- note', '-->'],
      ['<script>', '</script>'],
      ['<?xml', '?>'],
      ['<![CDATA[ x', ']]>'],
      ['<!DOCTYPE', '>'],
    ]) {
      const written = writeSheet([prose(open), calculation('x = 1')], readSheet(utf8('')).origin);
      assert.equal(textOfBytes(written), `${open}\n${closing}\n\n\`\`\`kft\nx = 1\n\`\`\`\n`);
    }
  });

  it('does not let a rule at the head become front matter with one in a later cell', () => {
    const written = writeSheet([prose('---\ntext'), calculation('---')], readSheet(utf8('')).origin);
    assert.equal(textOfBytes(written), '\n---\ntext\n\n```kft\n---\n```\n');
  });

  it('forgets a cell that changed its kind', () => {
    assert.equal(
      changed('a\n\n```kft\nx = 1\n```\n', ([first, second]) => [first, { ...second, kind: 'prose' }]),
      'a\n\n<!-- cell -->\n\nx = 1\n',
    );
  });

  it('makes a cell of a cell fence that was typed into prose, when the file is opened again', () => {
    const written = writeSheet([prose('a\n\n```kft\nx = 1\n```')], readSheet(utf8('')).origin);
    assert.deepEqual(
      readSheet(written).cells.map((cell) => cell.kind),
      ['prose', 'calculation'],
    );
  });
});
