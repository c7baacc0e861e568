import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { z } from 'zod';
import { run, sheet } from './fake-console';

interface JsonValue {
  readonly kind: string;
  readonly value?: number | string;
  readonly unit?: string;
  readonly low?: number;
  readonly high?: number;
  readonly text?: string;
  readonly fields?: Readonly<Record<string, JsonValue>>;
  readonly items?: readonly JsonValue[];
}

const value: z.ZodType<JsonValue> = z.lazy(() =>
  z.union([
    z.strictObject({
      kind: z.literal('quantity'),
      value: z.number(),
      unit: z.string(),
      low: z.number().optional(),
      high: z.number().optional(),
      text: z.string(),
    }),
    z.strictObject({ kind: z.literal('record'), fields: z.record(z.string(), value) }),
    z.strictObject({ kind: z.literal('list'), items: z.array(value) }),
    z.strictObject({ kind: z.literal('boolean'), value: z.enum(['yes', 'no', 'cannot tell']), text: z.string() }),
    z.strictObject({ kind: z.enum(['conductor', 'text', 'choice', 'meter', 'absent']), text: z.string() }),
  ]),
);

/** What the command line promises to other programs. */
const report = z.strictObject({
  file: z.string(),
  ok: z.boolean(),
  values: z.record(z.string(), value),
  checks: z.array(
    z.strictObject({
      text: z.string(),
      verdict: z.enum(['yes', 'no', 'cannot tell']),
      line: z.int().positive(),
    }),
  ),
  diagnostics: z.array(
    z.strictObject({
      code: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
      severity: z.enum(['error', 'warning', 'information', 'hint']),
      message: z.string().min(10),
      line: z.int().positive(),
      column: z.int().positive(),
      endLine: z.int().positive(),
      endColumn: z.int().positive(),
    }),
  ),
});

const json = async (text: string) => {
  const { out, code } = await run(['run', '-', '--format', 'json'], text);
  return { code, report: report.parse(JSON.parse(out)) };
};

describe('results for other programs', () => {
  it('have the promised shape for every example and starter sheet', async () => {
    const files = ['examples', 'seeds'].flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith('.kft.md'))
        .map((name) => `${folder}/${name}`),
    );
    const { out } = await run(['run', '--format', 'json', ...files]);
    const lines = out.trimEnd().split('\n');
    assert.deepEqual(
      lines.map((line) => report.parse(JSON.parse(line)).file),
      files,
    );
  });

  it('give a quantity in its unit at full precision', async () => {
    const { code, report: found } = await json(sheet('U = 207.6 V\nI = U / (11.9 Ω)\nrun = 62 ft'));
    assert.equal(code, 0);
    assert.equal(found.ok, true);
    // Ohm's law by hand; common practice, no source.
    assert.ok(Math.abs(Number(found.values.I.value) - 207.6 / 11.9) < 1e-12);
    assert.equal(found.values.I.unit, 'A');
    assert.equal(found.values.I.low, undefined);
    assert.equal(found.values.run.unit, 'ft');
    assert.ok(Math.abs(Number(found.values.run.value) - 62) < 1e-9);
  });

  it('tell conductors by their text, and records by their fields', async () => {
    const { report: found } = await json(
      sheet('wire = 12 AWG Cu THHN\nh = heater(resistance: 11.9 Ω, voltage: 208 V)'),
    );
    assert.deepEqual(found.values.wire, { kind: 'conductor', text: '12 AWG Cu THHN' });
    assert.equal(found.values.h.kind, 'record');
    assert.equal(found.values.h.fields?.current.unit, 'A');
  });

  it('tell each check with its line, and are not ok when one fails', async () => {
    const { code, report: found } = await json(sheet('I = 5 A\ncheck I <= 3 A "small enough"\ncheck I > 1 A "enough"'));
    assert.equal(code, 1);
    assert.equal(found.ok, false);
    assert.deepEqual(found.checks, [
      { text: 'small enough', verdict: 'no', line: 3 },
      { text: 'enough', verdict: 'yes', line: 4 },
    ]);
  });

  it('tell problems with their places, and a file that is not there as one', async () => {
    const { report: found } = await json(sheet('a = 1 A\nb = a + missing'));
    const [problem] = found.diagnostics;
    assert.deepEqual(
      [problem.code, problem.line, problem.column, problem.endLine, problem.endColumn],
      ['unknown-name', 3, 9, 3, 16],
    );
    const gone = await run(['check', 'not-there.kft.md', '--format', 'json']);
    assert.equal(gone.code, 1);
    assert.equal(report.parse(JSON.parse(gone.out)).diagnostics[0].code, 'unreadable-file');
  });
});
