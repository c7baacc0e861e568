import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { run, sheet } from './fake-console';

describe('run --cases', () => {
  let folder = '';
  const at = (name: string) => join(folder, name);
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'kilofoot-'));
    writeFileSync(
      at('a.kft.md'),
      sheet('input run = 85 ft from 5 ft to 400 ft\ninput site = "north"\ntwice = 2 * run'),
    );
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  const cases = (csv: string, ...more: string[]) => {
    writeFileSync(at('c.csv'), csv);
    return run(['run', at('a.kft.md'), '--cases', at('c.csv'), ...more]);
  };

  it('writes a row for each, with the problems last, and names bad rows by number', async () => {
    const { code, out, err } = await cases('run,site\n20,"a, b"\n500,x\n7 A,y\n30\n10 m,"say ""hi"""\n');
    assert.equal(code, 1);
    const rows = parse(out) as string[][];
    assert.deepEqual(rows[0], ['run', 'site', 'twice (ft)', 'problems']);
    assert.deepEqual(rows[1], ['20', 'a, b', '40', '']);
    assert.match(rows[2][3], /500 ft is outside 5 ft to 400 ft/);
    assert.match(rows[3][3], /`run` is a length \(ft\); 7 A is a current \(A\)\./);
    assert.match(rows[4][3], /1 cell in this row, 2 cells in the header/);
    assert.deepEqual(rows[5].slice(0, 2), ['10 m', 'say "hi"']);
    assert.ok(Math.abs(Number(rows[5][2]) - 20 / 0.3048) < 1e-9);
    assert.deepEqual(err.match(/row \d+/g), ['row 2', 'row 3', 'row 4'], 'bad rows are told on standard error');
  });

  it('reads the CSVs that other programs write: a byte order mark, CRLF, blank lines', async () => {
    const { code, out } = await cases('\ufeffrun,site\r\n20,x\r\n\r\n30,y\r\n');
    assert.equal(code, 0);
    assert.equal(out, 'run,site,twice (ft),problems\n20,x,40,\n30,y,60,\n');
  });

  it('takes the sheet from standard input, other inputs by --set, and writes a file whole', async () => {
    writeFileSync(at('c.csv'), 'site\nx\n');
    const args = ['run', '-', '--cases', at('c.csv'), '--set', 'run=7', '-o', at('out.csv')];
    const { code, out } = await run(args, readFileSync(at('a.kft.md')));
    assert.deepEqual([code, out], [0, '']);
    assert.equal(readFileSync(at('out.csv'), 'utf8'), 'site,run (ft),twice (ft),problems\nx,7,14,\n');
  });

  for (const [what, csv, more, message] of [
    ['an unknown input', 'runn\n1\n', [], /`runn` is no input of the sheet\. Did you mean `run`\?/],
    ['an empty file', '', [], /c\.csv is empty/],
    ['a format', 'run\n1\n', ['--format', 'json'], /--cases writes CSV/],
    ['a bad --set', 'site\nx\n', ['--set', 'run=500'], /--set run: `run`: 500 ft is outside 5 ft to 400 ft/],
  ] as const) {
    it(`refuses ${what} as a wrong command line`, async () => {
      const { code, err, out } = await cases(csv, ...more);
      assert.equal(code, 2);
      assert.match(err, message);
      assert.equal(out, '');
    });
  }

  it('tells of a CSV that is not there or cannot be read, and leaves no file', async () => {
    const gone = await run(['run', at('a.kft.md'), '--cases', at('gone.csv'), '-o', at('out.csv')]);
    assert.equal(gone.code, 1);
    assert.match(gone.err, /gone\.csv is not there/);
    const torn = await cases('run,site\n20,"a\n', '-o', at('out.csv'));
    assert.equal(torn.code, 1);
    assert.match(torn.err, /cannot be read as CSV/);
    assert.deepEqual(readdirSync(folder).sort(), ['a.kft.md', 'c.csv']);
  });

  it('leaves no half-written file when it is interrupted', async () => {
    const child = spawn(
      process.execPath,
      [
        '--import',
        'tsx',
        join(__dirname, '..', '..', 'src', 'cli', 'main.ts'),
        'run',
        at('a.kft.md'),
        '--cases',
        '-',
        '-o',
        at('out.csv'),
      ],
      { stdio: ['pipe', 'ignore', 'ignore'] },
    );
    // Standard input stays open, so the run waits for more when the file has been begun.
    child.stdin.write('run\n20\n');
    while (!readdirSync(folder).some((name) => name.endsWith('.part')) && child.exitCode === null) {
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.on('exit', resolve));
    assert.equal(code, 130);
    assert.equal(existsSync(at('out.csv')), false);
    assert.deepEqual(readdirSync(folder), ['a.kft.md']);
  });
});
