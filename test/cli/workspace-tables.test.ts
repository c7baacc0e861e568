import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { localAmendment } from '../local-amendment';
import { run, sheet } from './fake-console';

describe('a table file beside a sheet', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'kilofoot-'));
    writeFileSync(
      join(folder, 'a.kft.md'),
      sheet('a = ampacity(12 AWG Cu THHN, terminals: 75 °C, bundled: 8)\nb = ampacity(12 AWG Cu THHN, bundled: 4)'),
    );
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('goes before the shipped table, row by row, and the results say so', async () => {
    writeFileSync(join(folder, 'town.kft-table.json'), localAmendment('60'));
    const { code, out } = await run(['run', join(folder, 'a.kft.md')]);
    assert.equal(code, 0);
    assert.match(out, /a = 18 A/); // 30 A of the 90 °C column × 0.60
    assert.match(out, /local amendment 12[\s\S]*town\.kft-table\.json/);
    assert.match(out, /Table 310\.15\(C\)\(1\)/); // Four conductors still come from the shipped table.
  });

  it('is refused whole with its place when it is wrong, and the sheet is evaluated without it', async () => {
    writeFileSync(join(folder, 'town.kft-table.json'), localAmendment('sixty'));
    const { code, out, err } = await run(['run', join(folder, 'a.kft.md')]);
    assert.equal(code, 1);
    assert.match(err, /town\.kft-table\.json:1:\d+ Row 1 \(7\), percent: "sixty" .* The table was not taken\./);
    assert.match(out, /a = 21 A/); // 30 A × 0.70, as shipped
  });
});
