import assert from 'node:assert/strict';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { showValue } from '../../src/display';
import type { Value } from '../../src/language';
import { type FolderFiles, SheetSession } from '../../src/session';
import '../fuzz-seed';

/** A folder with these files, and a sheet in it. */
class Folder implements FolderFiles {
  readonly path = 'sheet.kft.md';
  private readonly files = new Map<string, Uint8Array>();

  constructor(files: Readonly<Record<string, string | Uint8Array>>) {
    for (const [name, content] of Object.entries(files)) {
      this.set(name, content);
    }
  }

  set(name: string, content: string | Uint8Array): void {
    this.files.set(name, typeof content === 'string' ? new TextEncoder().encode(content) : content);
  }

  read(path: string) {
    return this.files.get(path) ?? { problem: 'is not there. Check the name and the folder.' };
  }

  tableFiles = () => [];
}

const sheet = (text: string) => [{ id: 'cell', kind: 'calculation' as const, text }];

function sessionOf(text: string, files: Readonly<Record<string, string | Uint8Array>>) {
  const folder = new Folder(files);
  const session = new SheetSession({ files: folder });
  session.update(sheet(text));
  return { folder, session };
}

function problemsOf(content: string | Uint8Array, text = 'p = schedule "rows.csv"'): string[] {
  const { session } = sessionOf(text, { 'rows.csv': content });
  return session.diagnostics('cell').map(({ code, message }) => `${code}: ${message}`);
}

/** The rows as text, cell by cell; any problem fails the test. */
function rowsOf(content: string | Uint8Array, formulas = ''): string[][] {
  const { session } = sessionOf(`p = schedule "rows.csv"${formulas}`, { 'rows.csv': content });
  assert.deepEqual(session.program.diagnostics('cell'), []);
  const value: Value | undefined = session.results('cell')[0].value;
  assert.ok(value?.kind === 'list');
  return value.items.map((row) =>
    row.kind === 'record'
      ? [...row.fields.values()].map((cell) => (cell.kind === 'absent' ? '' : showValue(cell)))
      : [],
  );
}

describe('rows of a file', () => {
  it('say how a number is written that they have in another way', () => {
    const told = (cell: string) => problemsOf(`load\n2 kVA\n3 kVA\n"${cell}"\n`).join();
    assert.match(told('1,200 kVA'), /line 4, column 1: .* Write `1200`\./);
    assert.match(told('1,5 kVA'), /The decimal sign is a point. Write `1\.5`\./);
    assert.match(told('$5.00'), /Money has its currency behind it: `5\.00 USD`\./);
  });

  it('are typed as those below a schedule are, formulas and all', () => {
    const csv =
      'tag,load,volts,conductor,spare\nP1,9.6 kVA,240 V,6 AWG Cu THHN,no\nLP-2,1.2 kVA,120 V,12 AWG Cu THHN,yes\n';
    assert.deepEqual(rowsOf(csv, '\n  amps = load / volts'), [
      ['P1', '9.6 kVA', '240 V', '6 AWG Cu THHN', 'no', '40 A'],
      ['LP-2', '1.2 kVA', '120 V', '12 AWG Cu THHN', 'yes', '10 A'],
    ]);
  });

  it('take the unit of a heading for bare numbers, and a name from any heading', () => {
    assert.deepEqual(rowsOf('tag,run length (ft),load [kVA]\na,85,9.2\nb,20 m,1.5\n', '\n  far = run_length > 70 ft'), [
      ['a', '85 ft', '9.2 kVA', 'yes'],
      ['b', '65.62 ft', '1.5 kVA', 'no'],
    ]);
  });

  it('hold text as spreadsheets write it', () => {
    assert.deepEqual(rowsOf('tag,note\nP1,"kitchen, ""north"" side"\n"2",| third // row\nhall,"two\nlines"\n-,---\n'), [
      ['P1', 'kitchen, "north" side'],
      ['2', '| third // row'],
      ['hall', 'two lines'],
      ['-', '---'],
    ]);
  });

  it('may end with any line break, begin with a byte order mark, and be parted by semicolons or tabs', () => {
    const expected = [
      ['a', '3 A'],
      ['b', '4 A'],
    ];
    for (const csv of [
      'tag,i\r\na,3 A\r\n\r\nb,4 A\r\n,\r\n',
      '\ufefftag,i\na,3 A\nb,4 A',
      'tag;i\na;3 A\nb;4 A',
      'tag\ti\ra\t3 A\rb\t4 A\r',
    ]) {
      assert.deepEqual(rowsOf(csv), expected, JSON.stringify(csv));
    }
  });

  it('know no names of the sheet', () => {
    const { session } = sessionOf('base = 3 A\np = schedule "rows.csv"', {
      'rows.csv': 'tag,i\na,base\nb,3 A\nc,4 A\n',
    });
    assert.match(
      session.diagnostics('cell').map(({ message }) => message)[0],
      /`base` is a word, and the other cells of `i` are values/,
    );
  });

  it('tell line and column of a cell that does not fit, and use the others', () => {
    const csv = 'tag,note,i\na,"x\ny",3 A\nb,z,4 V\nc,"say ""no""",five\nd,,6 A\n';
    assert.deepEqual(problemsOf(csv), [
      'unlike-cell: "rows.csv", line 4, column 5: `4 V` is a voltage (V), and the other cells of `i` are a current (A). All cells of a column are of one kind: correct it, or give it a column of its own.',
      'unlike-cell: "rows.csv", line 5, column 16: `five` is a word, and the other cells of `i` are values. Write a number with its unit, or leave the cell empty.',
    ]);
    assert.match(
      problemsOf(csv, 'p = schedule "rows.csv"\nx = sum(p.i)')[2],
      /row 2 \(`b`\) of `p` has none, nor have 1 more/,
    );
  });

  it('tell a row with a comma too many', () => {
    assert.deepEqual(problemsOf('tag,i\na,3 A\nb,c,4 A\n'), [
      'row-width: "rows.csv", line 3, column 5: This row has 3 cells, and the heading names 2. Where a comma belongs to a cell, put the cell in quotation marks.',
    ]);
  });

  it('tell where a formula comes to nothing', () => {
    assert.deepEqual(problemsOf('tag,u,i\na,3 V,2 A\nb,3 V,0 A\n', 'p = schedule "rows.csv"\n  r = u / i'), [
      'division-by-zero: "rows.csv", line 3, column 7: Row 2 (`b`): `r` comes to nothing. `u / i` divides by zero: `i` is 0.',
    ]);
  });

  it('tell so many bad rows and count the rest', () => {
    const rows = Array.from({ length: 300 }, (_, i) => (i % 3 === 0 ? '4 V' : '3 A')).join('\n');
    const told = problemsOf(`i\n${rows}\n`);
    assert.equal(told.length, 41);
    assert.match(told[40], /"rows.csv", line 122, column 1: 60 more rows cannot be used/);
  });

  it('say what is wrong with the file as a whole', () => {
    const cases: readonly (readonly [string | Uint8Array, RegExp])[] = [
      ['', /^no-rows: "rows.csv" is empty/],
      ['\n\n', /^no-rows: "rows.csv" is empty/],
      ['tag,i\n', /^no-rows: "rows.csv" has a heading and no rows/],
      ['tag,"i\na,3 A\n', /^broken-rows: "rows.csv", line \d: a quotation mark that begins a cell is not closed/],
      ['tag,i\na,3"A\n', /^broken-rows: "rows.csv", line 2: a quotation mark stands within a cell/],
      [new Uint8Array([116, 0, 10]), /^binary-file: /],
      [new Uint8Array([116, 0xe9, 10, 49, 10]), /^not-utf-8: /],
      [new Uint8Array(17 * 1024 * 1024).fill(49), /^file-too-large: /],
      ['i,i\n3 A,4 A\n', /^duplicate-column: /],
      ['i,!\n3 A,4 A\n', /^bad-column-name: The heading of column 2/],
    ];
    for (const [content, expected] of cases) {
      const told = problemsOf(content);
      assert.equal(told.length, 1, String(expected));
      assert.match(told[0], expected);
    }
  });

  it('come from the folder tree of the sheet alone', () => {
    const told = (name: string) => problemsOf('i\n3 A\n', `p = schedule "${name}"`)[0];
    assert.match(told('other.csv'), /^missing-file: "other.csv" is not there/);
    assert.match(told('../rows.csv'), /^file-out-of-reach: /);
    assert.match(told('/etc/passwd'), /^file-out-of-reach: /);
    const alone = new SheetSession();
    alone.update(sheet('p = schedule "rows.csv"'));
    assert.equal(alone.diagnostics('cell')[0].code, 'no-other-sheets');
  });

  it('are read again when the file changes, and only then', () => {
    const { folder, session } = sessionOf('p = schedule "rows.csv"\nx = sum(p.load)', { 'rows.csv': 'load\n3 W\n' });
    const before = session.results('cell')[0];
    assert.deepEqual([...session.update(sheet('p = schedule "rows.csv"\nx = sum(p.load)'))], []);
    assert.equal(session.results('cell')[0], before);
    folder.set('rows.csv', 'load\n3 W\n4 W\n');
    assert.deepEqual([...session.update(sheet('p = schedule "rows.csv"\nx = sum(p.load)'))], ['cell']);
    const value = session.results('cell')[1].value;
    assert.equal(value && showValue(value), '7 W');
  });

  it('come back as they were written, whatever text they hold', () => {
    const cell = fc.string({ unit: 'binary', maxLength: 12 }).map((text) => text.replace(/\0/g, ''));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const marked = rows.map(([a, b]) => [`x ${a}`, `y ${b}`]);
        const { session } = sessionOf('p = schedule "rows.csv"', { 'rows.csv': stringify([['a', 'b'], ...marked]) });
        const value = session.results('cell')[0].value;
        assert.ok(value?.kind === 'list');
        const texts = value.items.map((row) =>
          row.kind === 'record'
            ? [...row.fields.values()].map((one) => (one.kind === 'text' ? one.value : one.kind))
            : [],
        );
        assert.deepEqual(
          texts,
          marked.map((row) => row.map((text) => text.trim())),
        );
      }),
      { numRuns: 200 },
    );
  });
});
