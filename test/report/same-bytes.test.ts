import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { reportFormats } from '../../src/core';

const root = join(__dirname, '..', '..');
const formats = Object.keys(reportFormats);

/** The digests of a sheet's report in every format, made by the command line in a process of its own. */
function digests(environment: Readonly<Record<string, string>>): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'kft-'));
  try {
    const script = `
      const { commandLine } = require('./src/cli/command-line');
      const { processConsole } = require('./src/cli/console');
      (async () => {
        for (const format of ${JSON.stringify(formats)}) {
          const out = require('node:path').join(${JSON.stringify(folder)}, 'report.' + format);
          await commandLine(['run', 'examples/part-reel.kft.md', '--format', format, '-o', out], processConsole());
        }
      })();`;
    execFileSync(process.execPath, ['--require', 'tsx/cjs', '-e', script], {
      cwd: root,
      env: { ...process.env, ...environment },
    });
    return formats.map((format) =>
      createHash('sha256')
        .update(readFileSync(join(folder, `report.${format}`)))
        .digest('hex'),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('a report', () => {
  it('has the same bytes in every format, wherever and in whichever process it is made', function () {
    this.timeout(120_000); // Two processes that load everything anew.
    const here = digests({ TZ: 'UTC', LANG: 'C', LC_ALL: 'C' });
    const there = digests({ TZ: 'Pacific/Kiritimati', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' });
    assert.equal(new Set(here).size, formats.length);
    assert.deepEqual(there, here);
  });
});
