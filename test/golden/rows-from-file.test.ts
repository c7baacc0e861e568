/** The example whose rows stand in a file beside it, run from its folder as a person does; `UPDATE_GOLDEN=1` stores anew. */
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from '../cli/fake-console';

const root = join(__dirname, '..', '..');
const sheet = 'examples/market-hall/market-hall.kft.md';
const stored = join(__dirname, 'market-hall');

function compare(file: string, text: string): void {
  if (process.env.UPDATE_GOLDEN) {
    mkdirSync(stored, { recursive: true });
    writeFileSync(join(stored, file), text);
  }
  assert.equal(text, readFileSync(join(stored, file), 'utf8'));
}

describe(sheet, () => {
  it('gives the stored text', async () => {
    const { code, out, err } = await run(['run', join(root, sheet)]);
    assert.deepEqual([code, err], [0, '']);
    compare('market-hall.txt', out.replaceAll(join(root, sheet), sheet));
  });

  it('gives its rows as a list of records', async () => {
    const { out } = await run(['run', join(root, sheet), '--format', 'json']);
    const { values } = JSON.parse(out);
    assert.equal(values.stalls.kind, 'list');
    assert.equal(values.stalls.items.length, 7);
    const [first] = values.stalls.items;
    assert.equal(first.kind, 'record');
    assert.deepEqual(first.fields.load, { kind: 'quantity', value: 1320, unit: 'VA', text: '1320 VA' });
    assert.deepEqual(first.fields.conductor, { kind: 'conductor', text: '12 AWG Cu THHN' });
    assert.equal(values.stalls.items[6].fields.load.kind, 'absent');
    // Worked by hand: 1320 + 1440 + 1500 + 960 + 420 + 1560 VA.
    assert.equal(values.total.value, 7.2);
  });

  it('is laid out as the formatter does it', async () => {
    const bytes = readFileSync(join(root, sheet));
    assert.equal((await run(['format', '-'], bytes)).out, bytes.toString('utf8'));
  });
});
