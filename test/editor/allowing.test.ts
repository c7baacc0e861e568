import assert from 'node:assert/strict';
import { allowingOf } from '../../src/core';
import { applyEdits } from '../../src/text';
import { cells } from './marked-cells';

describe('allowing a finding', () => {
  // A 200 ft run of 14 AWG copper at 12 A drops more than 5 % of 120 V: 2 × 200 ft × 3.14 Ω/kft × 12 A = 15 V.
  const text =
    'a = 1\nk = circuit\n  load: 12 A\n  voltage: 120 V\n  length: 200 ft\n  conductor: 14 AWG Cu THHN\n  ocpd: 15 A\n  kind: general\n  drop_limit: 3 %';

  it('puts a line before its statement, and then the finding is gone', () => {
    const { session } = cells(text);
    const found = session.diagnostics('0').find(({ code }) => code === 'voltage-drop');
    assert.ok(found);
    const allowing = allowingOf(session.program.tree('0')!, found);
    assert.ok(allowing);
    const { offset, before, after } = allowing;
    const allowed = applyEdits(text, [
      { span: { start: offset, end: offset }, newText: `${before}measured on site${after}` },
    ]);
    assert.ok(allowed.startsWith('a = 1\nallow voltage-drop "measured on site"\nk = circuit'));
    assert.ok(
      !cells(allowed)
        .session.diagnostics('0')
        .some(({ code }) => code === 'voltage-drop'),
    );
  });

  it('is for lints alone', () => {
    const { session } = cells('x = 3 V + 2 A');
    const [problem] = session.diagnostics('0');
    assert.equal(allowingOf(session.program.tree('0')!, problem), undefined);
  });
});
