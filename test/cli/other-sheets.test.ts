import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { localAmendment } from '../local-amendment';
import { run, sheet } from './fake-console';

describe('sheets that take names from one another', () => {
  let folder = '';
  const write = (name: string, cell: string) => writeFileSync(join(folder, name), `# Sheet\n\n${sheet(cell)}`);
  const runSheet = (name: string, ...more: string[]) => run(['run', join(folder, name), ...more]);
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'kilofoot-'));
    mkdirSync(join(folder, 'shared'));
    write('shared/meters.kft.md', 'bench = meter(reading: 0.02 %, range: 0.005 Ω)');
    write('kiln.kft.md', 'use bench from "shared/meters.kft.md"\nelement = 13.21 Ω by bench\nrun = 62 ft');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('show the file that a value comes from, with its doubt', async () => {
    write('memo.kft.md', 'use element from "kiln.kft.md"\npair = 2 * element');
    const { code, out } = await runSheet('memo.kft.md');
    assert.equal(code, 0, out);
    // Limits 0.02 % × 13.21 Ω + 0.005 Ω = 7.64 mΩ; times 0.95, since one rectangular term stands alone.
    assert.match(out, /element = 13\.2100 Ω ± 0\.0073 Ω {2}\/\/ from kiln\.kft\.md/);
    assert.match(out, /pair += 2 × element = 2 × 13\.21 Ω = 26\.420 Ω ± 0\.015 Ω/);
  });

  it('bring the tables and assumptions behind a value along', async () => {
    write('drop.kft.md', 'r = resistance(12 AWG Cu, 100 ft)\nboth = 2 * r');
    write('memo.kft.md', 'use both from "drop.kft.md"');
    const { out } = await runSheet('memo.kft.md');
    assert.match(out, /How drop\.kft\.md came to it[\s\S]*What goes into that[\s\S]*Sources\n.*Chapter 9 Table 8/);
    assert.match(out, /Assumptions[\s\S]*stranded taken/);
  });

  it('evaluate each sheet by its own front matter and the tables of its own folder', async () => {
    writeFileSync(join(folder, 'shared', 'town.kft-table.json'), localAmendment('60'));
    write('shared/amps.kft.md', 'there = ampacity(12 AWG Cu THHN, terminals: 75 °C, bundled: 8)');
    write(
      'memo.kft.md',
      'use there from "shared/amps.kft.md"\nhere = ampacity(12 AWG Cu THHN, terminals: 75 °C, bundled: 8)',
    );
    const { out } = await runSheet('memo.kft.md', '--format', 'json');
    const { values } = JSON.parse(out);
    assert.equal(values.there.value, 18); // 30 A × 0.60 of the amendment
    assert.equal(values.here.value, 21); // 30 A × 0.70 as shipped
  });

  for (const [what, cell, message] of [
    [
      'a way out of the tree',
      'use x from "../other.kft.md"',
      /:4:12 error file-out-of-reach\n.*leads out of the folder tree/,
    ],
    ['an absolute address', 'use x from "/etc/kiln.kft.md"', /file-out-of-reach\n.*is an absolute address/],
    ['a web address', 'use x from "https://example.org/a.kft.md"', /file-out-of-reach/],
    ['a file that is not there', 'use x from "gone.kft.md"', /missing-file\n.*"gone\.kft\.md" is not there\./],
    ['a file that is no sheet', 'use x from "shared"', /no-sheet\n.*sheets are called \*\.kft\.md/],
    ['a sheet that is not UTF-8', 'use x from "binary.kft.md"', /broken-file\n.*cannot be read as a sheet/],
    ['an edition without tables', 'use x from "old.kft.md"', /unknown-edition\n.*"old\.kft\.md" cannot be evaluated/],
    ['a link that leads out of the tree', 'use x from "link.kft.md"', /missing-file\n.*is a link that leads out/],
  ] as const) {
    it(`tell of ${what}`, async () => {
      const outside = mkdtempSync(join(tmpdir(), 'kilofoot-'));
      writeFileSync(join(outside, 'far.kft.md'), sheet('x = 1 V'));
      symlinkSync(join(outside, 'far.kft.md'), join(folder, 'link.kft.md'));
      writeFileSync(join(folder, 'binary.kft.md'), Uint8Array.of(0x80, 0x81, 0xfe));
      writeFileSync(join(folder, 'old.kft.md'), `---\ncode: NEC 1907\n---\n\n${sheet('x = 1 V')}`);
      write('memo.kft.md', cell);
      const { code, out } = await runSheet('memo.kft.md');
      rmSync(outside, { recursive: true });
      assert.equal(code, 1);
      assert.match(out, message);
    });
  }

  it('tell of a circle in both sheets', async () => {
    write('a.kft.md', 'use x from "b.kft.md"\ny = 1 V');
    write('b.kft.md', 'use y from "a.kft.md"\nx = y');
    assert.match((await runSheet('a.kft.md')).out, /sheet-cycle\n.*a\.kft\.md → b\.kft\.md → a\.kft\.md/);
    assert.match((await runSheet('b.kft.md')).out, /sheet-cycle\n.*b\.kft\.md → a\.kft\.md → b\.kft\.md/);
  });
});
