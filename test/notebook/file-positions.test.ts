import assert from 'node:assert/strict';
import fc from 'fast-check';
import { FilePositions, readSheet } from '../../src/notebook';
import { markdownish, utf8 } from './sheet-arbitraries';

describe('places in the file', () => {
  it('count lines and columns from 1, through front matter, line ends and indented fences', () => {
    const file = readSheet(utf8('\uFEFF---\r\ntitle: x\r\n---\r\n\r\n  ```kft\r\n  a = 1\r\n  bad = ?\r\n  ```\r\n'));
    const positions = new FilePositions(file);
    const start = file.cells[1].text.indexOf('?');
    const span = positions.span(1, { start, end: start + 1 });
    assert.deepEqual(positions.at(span.start), { line: 7, column: 9 });
    assert.deepEqual(positions.at(span.end), { line: 7, column: 10 });
  });

  it('keep to the cell when an offset lies outside it, and stand in an empty cell', () => {
    const file = readSheet(utf8('```kft\nab\n```\n\n```kft\n```\n'));
    const positions = new FilePositions(file);
    assert.equal(positions.offset(0, 99), 9);
    assert.equal(positions.offset(0, -1), 7);
    assert.deepEqual(positions.at(positions.offset(1, 0)), { line: 6, column: 1 });
  });

  it('lead back into the cell, from a fence\u2019s margin to the end of the line before, from elsewhere nowhere', () => {
    const text = '# T\n\n  ```kft\n  ab\n  cd\n  ```\n';
    const positions = new FilePositions(readSheet(utf8(text)));
    assert.deepEqual(positions.extent(1), { start: text.indexOf('ab'), end: text.indexOf('cd') + 2 });
    assert.equal(positions.inCell(1, text.indexOf('cd')), 3);
    assert.equal(positions.inCell(1, text.indexOf('cd') - 1), 2);
    assert.equal(positions.inCell(1, text.indexOf('# T')), undefined);
    assert.equal(positions.inCell(1, text.length - 1), undefined);
  });

  it('find each character of each cell again', () => {
    fc.assert(
      fc.property(markdownish, (text) => {
        const file = readSheet(utf8(text));
        const positions = new FilePositions(file);
        file.cells.forEach((cell, index) => {
          for (let i = 0; i < cell.text.length; i++) {
            const there = positions.text[positions.offset(index, i)];
            assert.equal(there === '\r' ? '\n' : there, cell.text[i]);
            assert.equal(positions.inCell(index, positions.offset(index, i)), i);
          }
        });
      }),
      { numRuns: 150 },
    );
  });
});
