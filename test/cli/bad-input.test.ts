import assert from 'node:assert/strict';
import { run, sheet } from './fake-console';

interface Case {
  readonly what: string;
  readonly text: string | Uint8Array;
  readonly code: string;
  /** Line and column of the problem in the file. */
  readonly at: string;
  /** What the message must say: what was found, what was expected or why it is wrong, what to do. */
  readonly says: readonly RegExp[];
}

const cases: readonly Case[] = [
  {
    what: 'an unknown name',
    text: sheet('supply = 240 V\nI = suply / (10 Ω)'),
    code: 'unknown-name',
    at: '3:5',
    says: [/suply/, /supply/],
  },
  { what: 'an unknown unit', text: sheet('P = 5 Kw'), code: 'unknown-unit', at: '2:7', says: [/Kw/, /kW/] },
  {
    what: 'units that do not add',
    text: sheet('x = 5 V + 3 A'),
    code: 'unlike-quantities',
    at: '2:5',
    says: [/V/, /A/],
  },
  {
    what: 'kinds of power that do not add',
    text: sheet('total = 5 kW + 3 kVA'),
    code: 'mixed-power-kinds',
    at: '2:9',
    says: [/power factor/i],
  },
  {
    what: 'an argument of the wrong kind',
    text: sheet('x = ocpd_for(20 V)'),
    code: 'wrong-argument',
    at: '2:14',
    says: [/V/, /A/],
  },
  {
    what: 'a fence that is not closed',
    text: '# Kiln\n\n```kft\nI = 5 A\n',
    code: 'unclosed-fence',
    at: '3:1',
    says: [/never closed/, /not.*evaluated|nothing in it is evaluated/, /Close it/],
  },
  {
    what: 'names that hang on each other',
    text: sheet('a = b + 1 A\nb = a + 1 A'),
    code: 'cycle',
    at: '2:1',
    says: [/a/, /b/],
  },
  {
    what: 'a division by zero',
    text: sheet('R = 0 Ω\nI = 240 V / R'),
    code: 'division-by-zero',
    at: '3:5',
    says: [/zero/, /R/],
  },
  {
    what: 'a conductor without its metal',
    text: sheet('r = resistance(12 AWG, 100 ft)'),
    code: 'conductor-metal-missing',
    at: '2:16',
    says: [/Cu/, /Al/],
  },
  {
    what: 'a size that no table has',
    text: sheet('r = resistance(13 AWG Cu, 100 ft)'),
    code: 'size-not-listed',
    at: '2:16',
    says: [/13 AWG/, /12 AWG/, /14 AWG/],
  },
  {
    what: 'an edition that is not there',
    text: `---\ncode: NEC 1907\n---\n\n${sheet('I = 5 A')}`,
    code: 'unknown-edition',
    at: '2:7',
    says: [/NEC 1907/, /NEC 2023/, /Nothing in this sheet is evaluated/],
  },
  {
    what: 'unit systems that are none',
    text: `---\nunits: metric\n---\n\n${sheet('I = 5 A')}`,
    code: 'unknown-unit-system',
    at: '2:8',
    says: [/metric/, /US/, /SI/],
  },
  {
    what: 'conflict markers',
    text: `a\n<<<<<<< ours\n${sheet('I = 5 A')}`,
    code: 'conflict-marker',
    at: '2:1',
    says: [/merge/, /not evaluated/, /Settle/],
  },
  {
    what: 'a binary file',
    text: Uint8Array.of(0x7f, 0x45, 0x4c, 0x46, 0, 1),
    code: 'binary-file',
    at: '1:1',
    says: [/zero bytes/, /UTF-8/, /Open a sheet/],
  },
  {
    what: 'a file that is not UTF-8',
    text: Uint8Array.of(0x61, 0xb5, 0x0a),
    code: 'not-utf-8',
    at: '1:1',
    says: [/not UTF-8/, /Save it as UTF-8/],
  },
  {
    what: 'a file that is too large',
    text: new Uint8Array(4 * 1024 * 1024 + 1).fill(0x20),
    code: 'file-too-large',
    at: '1:1',
    says: [/4194305 bytes/, /Part it/],
  },
];

describe('bad input', () => {
  for (const { what, text, code, at, says } of cases) {
    it(`is told with its place, what was found and what to do: ${what}`, async () => {
      const json = await run(['check', '-', '--format', 'json'], text);
      const { diagnostics, ok } = JSON.parse(json.out);
      const found = diagnostics.find((diagnostic: { code: string }) => diagnostic.code === code);
      assert.ok(found, `${code} among ${JSON.stringify(diagnostics)}`);
      assert.equal(`${found.line}:${found.column}`, at);
      for (const pattern of says) {
        assert.match(found.message, pattern);
      }
      assert.equal(ok, false);
      assert.equal(json.code, 1);

      const plain = await run(['check', '-'], text);
      assert.match(plain.out, new RegExp(`standard input:${at} error ${code}`));
      assert.match(plain.out, /^ +\d+ \| .*\n +\| \s*\^+$/m);
      assert.doesNotMatch(plain.out, /(?![\n\t])\p{Cc}/u, 'nothing steers the terminal');
      assert.ok(plain.out.split('\n').every((line) => line.length < 200));
      assert.doesNotMatch(plain.out + plain.err, /\n\s+at .*:\d+:\d+\)?/);
    });
  }
});
