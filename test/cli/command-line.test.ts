import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run, sheet } from './fake-console';

const well = sheet('I = 5 A');
const failing = sheet('I = 5 A\ncheck I <= 3 A "small enough"');

describe('the command line', () => {
  let folder = '';
  const file = (name: string, text: string): string => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  };
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'kilofoot-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('ends with 0 when all is well and 1 when a check fails or there is an error', async () => {
    assert.equal((await run(['run', file('a.kft.md', well)])).code, 0);
    assert.equal((await run(['run', file('b.kft.md', failing)])).code, 1);
    assert.equal((await run(['check', join(folder, 'a.kft.md'), join(folder, 'b.kft.md')])).code, 1);
    assert.equal((await run(['check', '-'], sheet('I = 5 A + 1 V'))).code, 1);
    assert.equal((await run(['check', '-'], well)).code, 0);
  });

  it('evaluates the other files when one cannot be read, says which and why, and ends with 1', async () => {
    const { code, out, err } = await run(['run', join(folder, 'none.kft.md'), folder, file('a.kft.md', well)]);
    assert.equal(code, 1);
    assert.match(err, /none\.kft\.md is not there\. Check the name/);
    assert.match(err, /is a folder; a file is expected/);
    assert.match(out, /I = 5 A/);
  });

  const wrong: readonly (readonly [string, readonly string[], RegExp])[] = [
    ['no command', [], /Usage: kilofoot/],
    ['an unknown command', ['compute', 'x'], /unknown command 'compute'/],
    ['no file', ['run'], /missing required argument 'files'/],
    ['an unknown option', ['run', '-', '--fast'], /unknown option '--fast'/],
    ['a format that is not there', ['run', '-', '--format', 'yaml'], /Allowed choices are text, json, pdf/],
    ['a format of another command', ['check', '-', '--format', 'md'], /Allowed choices are text, json\./],
    ['two sheets in one report', ['run', 'a.kft.md', 'b.kft.md', '--format', 'md'], /one report of one sheet/],
    [
      'a report in the place of its sheet',
      ['run', './a.kft.md', '--format', 'md', '-o', 'a.kft.md'],
      /would replace .*a\.kft\.md itself/,
    ],
    ['an input without a value', ['run', '-', '--set', 'a'], /Expected name=value/],
    ['an input that no sheet has', ['run', '-', '--set', 'a=1'], /--set a: no input of that name/],
    ['nothing to explain', ['explain'], /missing required argument 'name'/],
    ['a name that nothing has', ['explain', 'voltge_drop'], /Nothing is called `voltge_drop`.*Near it: voltage_drop/],
  ];
  for (const [what, args, message] of wrong) {
    it(`ends with 2 and says what is wrong for ${what}`, async () => {
      const { code, out, err } = await run(args, well);
      assert.equal(code, 2);
      assert.match(err, message);
      assert.equal(out, '');
    });
  }

  it('tells its commands when asked', async () => {
    const { code, out } = await run(['--help']);
    assert.equal(code, 0);
    for (const command of ['run', 'check', 'format', 'explain']) {
      assert.match(out, new RegExp(`^  ${command} `, 'm'));
    }
  });

  it('writes results to a file whole, without colours, and leaves nothing beside it', async () => {
    const target = join(folder, 'out.txt');
    const { code, out } = await run(['run', file('a.kft.md', well), '-o', target]);
    assert.equal(code, 0);
    assert.equal(out, '');
    assert.match(readFileSync(target, 'utf8'), /I = 5 A/);
    assert.deepEqual(readdirSync(folder).sort(), ['a.kft.md', 'out.txt']);
  });

  it('says when results cannot be written', async () => {
    const { code, err } = await run(['run', '-', '-o', join(folder, 'no', 'out.txt')], well);
    assert.equal(code, 1);
    assert.match(err, /out\.txt cannot be written: it is not there/);
  });

  it('never touches a sheet it runs or checks', async () => {
    const path = file('a.kft.md', '```kft\r\nI=5 A\r\n```');
    await run(['run', path]);
    await run(['check', path]);
    assert.equal(readFileSync(path, 'utf8'), '```kft\r\nI=5 A\r\n```');
  });

  describe('format', () => {
    it('tidies cells in place and nothing else', async () => {
      const path = file('a.kft.md', '#  Kiln\r\n\r\n```kft\r\nI=5 A  // as read\r\n```\r\nEnd  ');
      assert.equal((await run(['format', path])).code, 0);
      assert.equal(readFileSync(path, 'utf8'), '#  Kiln\r\n\r\n```kft\r\nI = 5 A  // as read\r\n```\r\nEnd  ');
      assert.equal((await run(['format', path, '--check'])).code, 0);
    });

    it('only names what would change when asked to check', async () => {
      const path = file('a.kft.md', sheet('I=5 A'));
      const { code, out } = await run(['format', '--check', path]);
      assert.equal(code, 1);
      assert.match(out, /a\.kft\.md would change/);
      assert.equal(readFileSync(path, 'utf8'), sheet('I=5 A'));
    });

    it('takes standard input to standard output', async () => {
      assert.equal((await run(['format', '-'], sheet('I=5 A'))).out, sheet('I = 5 A'));
    });

    it('leaves a file alone that is no sheet', async () => {
      const text = `<<<<<<< ours\n${sheet('I=5 A')}`;
      const path = file('a.kft.md', text);
      const { code, err } = await run(['format', path]);
      assert.equal(code, 1);
      assert.match(err, /merge that nobody settled/);
      assert.equal(readFileSync(path, 'utf8'), text);
    });
  });

  describe('explain', () => {
    for (const [what, name, page] of [
      ['a function', 'voltage_drop', /voltage_drop/],
      ['a function of plain mathematics', 'sqrt', /sqrt/],
      ['a lint', 'continuous-load', /^continuous-load\n/],
      ['a table by its number', '310.16', /12 AWG/],
      ['a table by its subject', 'ampacity', /NEC/],
      ['a unit', 'kft', /ft/],
      ['a conductor', '12 AWG Cu', /1\.98/],
    ] as const) {
      it(`tells of ${what}`, async () => {
        const { code, out } = await run(['explain', name]);
        assert.equal(code, 0);
        assert.match(out, page);
      });
    }

    it('takes a conductor unquoted, and asks for its metal', async () => {
      assert.equal((await run(['explain', '12', 'AWG', 'Cu'])).code, 0);
      const { code, err } = await run(['explain', '12 AWG']);
      assert.equal(code, 2);
      assert.match(err, /Cu|copper/);
    });
  });

  describe('--set', () => {
    const runs = sheet('input run = 85 ft from 5 ft to 400 ft "one-way length"\ntwice = 2 * run');

    it('gives an input another value, in its own unit when none is written', async () => {
      const { out } = await run(['run', '-', '--format', 'json', '--set', 'run=100'], runs);
      assert.ok(Math.abs(JSON.parse(out).values.twice.value - 200) < 1e-9);
      const metric = await run(['run', '-', '--format', 'json', '--set', 'run=30.48 m'], runs);
      assert.match(JSON.parse(metric.out).values.twice.text, /60\.96 m|200 ft/);
    });
  });
});
