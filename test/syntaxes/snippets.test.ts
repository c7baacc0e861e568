import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SheetSession } from '../../src/core';

const snippets: Record<string, { prefix: string; description: string; body: string[] }> = JSON.parse(
  readFileSync(join(__dirname, '../../syntaxes/snippets.json'), 'utf8'),
);

/** The text as it is before anything is typed over; a choice takes its first word. */
const expanded = (body: readonly string[]): string =>
  body.join('\n').replace(/\$\{\d+(?::([^}]*)|\|([^,|]*)[^}]*)\}/g, (_, text = '', choice = '') => text || choice);

describe('snippets', () => {
  for (const [name, { prefix, description, body }] of Object.entries(snippets)) {
    it(`${name} can be read and evaluated as it is inserted`, () => {
      const session = new SheetSession();
      const text = expanded(body);
      session.update([{ id: 'a', kind: 'calculation', text: prefix === 'allow' ? `${text}\nx = 3` : text }]);
      const errors = session.diagnostics('a').filter(({ severity }) => severity === 'error');
      assert.deepEqual(
        errors.filter(({ code }) => code !== 'not-available').map(({ message }) => message),
        [],
        text,
      );
      assert.ok(description.length > 10);
    });
  }

  it('have prefixes of their own', () => {
    const prefixes = Object.values(snippets).map(({ prefix }) => prefix);
    assert.equal(new Set(prefixes).size, prefixes.length);
  });
});
