import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { readSheet, writeSheet } from '../../src/core';
import { run } from './fake-console';

describe('run --write', () => {
  let folder = '';
  const file = () => join(folder, 'a.kft.md');
  const write = async (text: string) => {
    writeFileSync(file(), text);
    const outcome = await run(['run', file(), '--write']);
    return { ...outcome, text: readFileSync(file(), 'utf8') };
  };
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'kilofoot-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('puts results behind each cell, and nothing else changes', async () => {
    const { code, text } = await write(
      '# T\n\n```kft\nU = 240 V\nI = U / (12 Ω)\n```\nText.\n\n~~~kft\n// nothing\n~~~',
    );
    assert.equal(code, 0);
    assert.equal(
      text,
      '# T\n\n```kft\nU = 240 V\nI = U / (12 Ω)\n```\n\n```kft-result\nU = 240 V\nI = U / 12 Ω = 240 V / 12 Ω = 20 A\n```\nText.\n\n~~~kft\n// nothing\n~~~',
    );
    assert.deepEqual(readdirSync(folder), ['a.kft.md']);
  });

  it('writes the same again, and in the place of what is out of date', async () => {
    const first = (await write('```kft\nU = 240 V\n```\n')).text;
    assert.equal((await write(first)).text, first);
    assert.equal(
      (await write(first.replace('U = 240 V\n```\n\n', 'U = 120 V\n```\n\n'))).text,
      first.replaceAll('240', '120'),
    );
  });

  it('takes out the block of a cell that shows nothing any more', async () => {
    const first = (await write('```kft\nU = 240 V\n```\n\nText.\n')).text;
    assert.equal((await write(first.replace('U = 240 V', '// gone'))).text, '```kft\n// gone\n```\n\nText.\n');
  });

  it('keeps line ends, a byte order mark, and every byte that is not in such a block', async () => {
    const { text } = await write('\ufeff# T  \r\n\r\n```kft\r\nU = 240 V\r\n```\r\n\r\n\r\nA\ttab \r\n');
    assert.equal(
      text,
      '\ufeff# T  \r\n\r\n```kft\r\nU = 240 V\r\n```\r\n\r\n```kft-result\r\nU = 240 V\r\n```\r\n\r\n\r\nA\ttab \r\n',
    );
    const part = fc.constantFrom(
      '```kft\nU = 3 V\n```',
      '# H',
      'text',
      '',
      '    code',
      '- item',
      '<!-- cell -->',
      '```\nx\n```',
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(part, { maxLength: 6 }),
        fc.constantFrom('\n', '\n\n', '\r\n\r\n'),
        async (parts, between) => {
          const before = parts.join(between);
          const once = (await write(before)).text;
          assert.equal((await write(once)).text, once);
          const block = /(?:\r\n|\n){2}```kft-result(?:\r\n|\n)[^`]*```/g;
          assert.equal(once.replace(block, ''), before);
          const bytes = new TextEncoder().encode(once);
          assert.deepEqual(writeSheet(readSheet(bytes).cells, readSheet(bytes).origin), bytes);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is checked: results that no longer match are told, at their place', async () => {
    const first = (await write('```kft\nU = 240 V\n```\n\n```kft\nI = U / (12 Ω)\n```\n')).text;
    assert.doesNotMatch((await run(['check', file()])).out, /stale-result/);
    writeFileSync(file(), first.replace('U = 240 V\n```\n\n', 'U = 120 V\n```\n\n'));
    const { code, out } = await run(['check', file()]);
    assert.equal(code, 0); // A warning: the sheet itself is well.
    assert.deepEqual(out.match(/:\d+:\d+ warning stale-result/g), [
      ':5:1 warning stale-result',
      ':13:1 warning stale-result',
    ]);
    writeFileSync(file(), `---\nseverities:\n  stale-result: off\n---\n\n${first.replace('12 Ω', '13 Ω')}`);
    assert.doesNotMatch((await run(['check', file()])).out, /stale-result/);
  });

  for (const [what, args] of [
    ['standard input', ['run', '-', '--write']],
    ['other inputs', ['run', 'a.kft.md', '--write', '--set', 'a=1']],
    ['a report', ['run', 'a.kft.md', '--write', '--format', 'md']],
    ['cases', ['run', 'a.kft.md', '--write', '--cases', 'c.csv']],
  ] as const) {
    it(`is refused with ${what}`, async () => {
      const { code, err } = await run(args);
      assert.equal(code, 2);
      assert.match(err, /--write/);
    });
  }

  it('leaves a file alone that is no sheet', async () => {
    writeFileSync(file(), Uint8Array.of(0x80, 0xfe));
    const { code, err } = await run(['run', file(), '--write']);
    assert.equal(code, 1);
    assert.match(err, /nothing is written/);
    assert.deepEqual([...readFileSync(file())], [0x80, 0xfe]);
  });
});
