import assert from 'node:assert/strict';
import { headingsOf, readSheet, writeSheet } from '../../src/notebook';
import { textOfBytes, utf8 } from './sheet-arbitraries';

const cellsOf = (text: string) => readSheet(utf8(text)).cells.map(({ kind, text }) => [kind, text]);
const noticesOf = (bytes: Uint8Array) => readSheet(bytes).notices.map(({ code, span }) => [code, span.start, span.end]);

describe('reading a sheet', () => {
  it('parts it at top-level fences whose first info word is kft', () => {
    assert.deepEqual(cellsOf('# Kiln\n\n```kft\nI = 5 A\n```\n\nMore.\n'), [
      ['prose', '# Kiln'],
      ['calculation', 'I = 5 A'],
      ['prose', 'More.'],
    ]);
  });

  it('takes tildes, long fences, further words and up to three spaces before the fence', () => {
    assert.deepEqual(
      cellsOf('~~~~ kft  title="x"\n~~~\n~~~~\n   ```kft folded\n     a = 1\n   b = 2\n c = 3\n   ```\n'),
      [
        ['calculation', '~~~'],
        ['calculation', '  a = 1\nb = 2\nc = 3'],
      ],
    );
  });

  it('leaves other fences, indented code, lists, quotations, notes and HTML to the prose', () => {
    for (const prose of [
      '```python\nx = 1\n```',
      '```kftx\nx = 1\n```',
      'see\n\n    ```kft\n    x\n    ```',
      '- item\n\n  ```kft\n  x = 1\n  ```',
      '> ```kft\n> x = 1\n> ```',
      '[^1]: note\n\n    ```kft\n    x\n    ```',
      '<div>\n```kft\nx = 1\n```\n</div>',
      '<!--\n```kft\nx = 1\n```\n-->',
      '````markdown\n```kft\nx = 1\n```\n````',
    ]) {
      assert.deepEqual(cellsOf(prose), [['prose', prose]]);
    }
  });

  it('parts touching prose at the comment line, empty cells included', () => {
    assert.deepEqual(cellsOf('a\n\n<!-- cell -->\n\nb\n\n<!-- cell -->\n\n<!-- cell -->\nc'), [
      ['prose', 'a'],
      ['prose', 'b'],
      ['prose', ''],
      ['prose', 'c'],
    ]);
    assert.deepEqual(cellsOf('<!-- cell -->\n```kft\n```'), [
      ['prose', ''],
      ['calculation', ''],
    ]);
  });

  it('gives front matter a cell of its own, and only at the head', () => {
    assert.deepEqual(cellsOf('---\ntitle: Kiln\n---\n# Kiln\n'), [
      ['prose', '---\ntitle: Kiln\n---'],
      ['prose', '# Kiln'],
    ]);
    assert.deepEqual(cellsOf('\n---\ntitle: Kiln\n---\n'), [['prose', '---\ntitle: Kiln\n---']]);
  });

  it('shows every line end as \\n and knows the one in use', () => {
    const file = readSheet(utf8('a\r\nb\rc\n\r\n```kft\r\nx = 1\r\ny = 2\r\n```\r\n'));
    assert.deepEqual(
      file.cells.map((cell) => cell.text),
      ['a\nb\nc', 'x = 1\ny = 2'],
    );
    assert.equal(file.origin.lineEnd, '\r\n');
  });

  it('names headings', () => {
    assert.deepEqual(headingsOf('# Kiln #\n\ntext\n\n## *Two* wires\n\nUnder\n===\n\n```sh\n# no\n```\n\nLow\n---'), [
      { depth: 1, text: 'Kiln' },
      { depth: 2, text: '*Two* wires' },
      { depth: 1, text: 'Under' },
      { depth: 2, text: 'Low' },
    ]);
  });
});

describe('a file that is not quite a sheet', () => {
  it('shows an unclosed cell as text and says where it opens', () => {
    const text = '# Kiln\n\n```kft\nI = 5 A\n';
    assert.deepEqual(cellsOf(text), [['prose', '# Kiln\n\n```kft\nI = 5 A']]);
    assert.deepEqual(noticesOf(utf8(text)), [['unclosed-fence', 8, 14]]);
    assert.equal(readSheet(utf8(text)).editable, true);
  });

  it('says so too when another fence swallows a cell, and is quiet when it swallows none', () => {
    assert.deepEqual(noticesOf(utf8('```python\nx\n\n```kft\ny = 1\n')), [['unclosed-fence', 0, 9]]);
    assert.deepEqual(noticesOf(utf8('```python\nx\n')), []);
  });

  const refused: readonly (readonly [string, string, Uint8Array])[] = [
    ['conflict-marker', 'conflict markers', utf8('a\n<<<<<<< ours\n```kft\nx = 1\n```\n=======\nb\n>>>>>>> theirs\n')],
    ['not-utf-8', 'bytes that are not UTF-8', Uint8Array.of(0x61, 0xc3, 0x28, 0x0a)],
    ['binary-file', 'zero bytes', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 8, 0)],
    ['file-too-large', 'more than a sheet may', new Uint8Array(4 * 1024 * 1024 + 1).fill(0x61)],
  ];
  for (const [code, what, bytes] of refused) {
    it(`is text only when it holds ${what}, and is given back as it was whatever the cells then say`, () => {
      const file = readSheet(bytes);
      assert.deepEqual(
        file.notices.map((notice) => [notice.code, notice.severity]),
        [[code, 'error']],
      );
      assert.equal(file.editable, false);
      assert.deepEqual(
        file.cells.map((cell) => cell.kind),
        ['prose'],
      );
      assert.ok(Buffer.from(bytes).equals(writeSheet([], file.origin)));
    });
  }

  it('puts the notice of a conflict on its first mark', () => {
    assert.deepEqual(noticesOf(utf8('a\r\n<<<<<<< ours\r\n')), [['conflict-marker', 3, 15]]);
    assert.deepEqual(noticesOf(utf8('a <<<<<<< b\n<<<<<<<< c\n')), []);
  });

  it('keeps what cannot be shown out of the text but not out of the file', () => {
    assert.equal(readSheet(Uint8Array.of(0x61, 0xff)).cells[0].text, 'a\uFFFD');
    assert.equal(textOfBytes(utf8('\uFEFFa')), '\uFEFFa');
  });
});
