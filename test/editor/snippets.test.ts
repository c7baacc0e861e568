import assert from 'node:assert/strict';
import { completionsAt, SheetSession } from '../../src/core';
import { snippets } from '../../src/editor/completion/snippets';
import { cells } from './marked-cells';

/** The text as it is before anything is typed over; a choice takes its first word. */
const expanded = (body: readonly string[]): string =>
  body.join('\n').replace(/\$\{\d+(?::([^}]*)|\|([^,|]*)[^}]*)\}/g, (_, text = '', choice = '') => text || choice);

/** The snippets that are offered at the mark. */
function offered(text: string): string[] {
  const { session, cell, offset } = cells(text);
  return completionsAt(session, cell, offset)
    .filter(({ kind }) => kind === 'snippet')
    .map(({ label }) => label);
}

const all = snippets.map(({ prefix }) => prefix);

describe('snippets', () => {
  for (const { prefix, description, body } of snippets) {
    it(`${prefix} can be read and evaluated as it is inserted`, () => {
      const session = new SheetSession();
      const text = expanded(body);
      session.update([{ id: 'a', kind: 'calculation', text: prefix === 'allow' ? `${text}\nx = 3` : text }]);
      const errors = session.diagnostics('a').filter(({ severity }) => severity === 'error');
      assert.deepEqual(
        errors.map(({ message }) => message),
        [],
        text,
      );
      assert.ok(description.length > 10);
    });
  }

  it('have prefixes of their own', () => {
    assert.equal(new Set(all).size, all.length);
  });

  it('are offered where a statement can begin', () => {
    for (const text of [
      '¦',
      'che¦',
      'x = 3 V\nsch¦',
      'x = 3 V\n\n¦',
      'k = circuit\n  load: 3 A\nso¦',
      '  x = 3 V\n  ch¦',
    ]) {
      assert.deepEqual(offered(text), all, text);
    }
  });

  it('are offered nowhere else', () => {
    for (const text of [
      'x = 3 V // che¦',
      '// che¦',
      'check 3 V > 2 V "che¦',
      'use a from "che¦',
      'x = che¦',
      'x = 3 V + che¦',
      'x = 240 ¦',
      'x = max(3 V,\n  che¦',
      'x = max(3 V,\nche¦)',
      'k = circuit\n  loa¦',
      'k = circuit\n  load: che¦',
      'solve x\n  ch¦',
      'panel = schedule\n  | ta¦',
      'kiln.ch¦',
      'allow che¦',
    ]) {
      assert.deepEqual(offered(text), [], text);
    }
  });

  it('show what they write, with its first choices', () => {
    const { session, cell, offset } = cells('sol¦');
    const found = completionsAt(session, cell, offset).find(
      ({ kind, label }) => kind === 'snippet' && label === 'solve',
    );
    assert.match(found?.text ?? '', /^solve .+\n {2}\$\{2:240 V == current \* 12 Ω\}$/);
    assert.equal(found?.page, '```\nsolve current\n  240 V == current * 12 Ω\n```');
  });
});
