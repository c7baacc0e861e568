import assert from 'node:assert/strict';
import { evaluateSheet, SheetSession } from '../../src/session';

const shed =
  'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 12 AWG Cu THHN)';
const sheet = (front: string, cell: string) => `---\n${front}\n---\n\n# Shed\n\n\`\`\`kft\n${cell}\n\`\`\`\n`;

describe('what a sheet says of its own warnings', () => {
  it('severities in the front matter go before those of the settings', () => {
    const severities = { 'voltage-drop': 'warning' } as const;
    const weights = (front: string) =>
      evaluateSheet(sheet(front, shed), { severities }).diagnostics.map(({ code, severity }) => [code, severity]);
    assert.deepEqual(weights('title: Shed'), [['voltage-drop', 'warning']]);
    assert.deepEqual(weights('severities:\n  voltage-drop: hint'), [['voltage-drop', 'hint']]);
    assert.deepEqual(weights('severities:\n  voltage-drop: off'), []);
  });

  it('a name that no lint has is told where it stands, with the one that comes near', () => {
    const [found] = evaluateSheet(sheet('severities:\n  voltage-dorp: off', shed)).diagnostics;
    assert.deepEqual([found.code, found.line, found.column], ['unknown-lint', 3, 3]);
    assert.equal(found.fixes?.[0].title, 'Write voltage-drop');
  });

  it('a change of the front matter is taken into account at once', () => {
    const session = new SheetSession();
    const cells = (weight: string) => [
      { id: 'front', kind: 'prose' as const, text: `---\nseverities:\n  voltage-drop: ${weight}\n---` },
      { id: 'cell', kind: 'calculation' as const, text: shed },
    ];
    session.update(cells('error'));
    assert.equal(session.diagnostics('cell')[0].severity, 'error');
    assert.ok(session.update(cells('hint')).has('cell'));
    assert.equal(session.diagnostics('cell')[0].severity, 'hint');
  });

  it('an accepted finding is handed on with its reason and the finding itself', () => {
    const { allowed, diagnostics } = evaluateSheet(
      sheet('title: Shed', `allow voltage-drop "lamps do not mind"\n${shed}`),
    );
    assert.deepEqual(diagnostics, []);
    assert.deepEqual(
      allowed.map(({ lint, reason, finding }) => [lint, reason, finding.line]),
      [['voltage-drop', 'lamps do not mind', 9]],
    );
    assert.match(allowed[0].finding.message, /advisory/);
  });

  it('cautions that are acknowledged are still there for a report', () => {
    const evaluation = evaluateSheet(sheet('cautions: acknowledged', shed));
    assert.equal(evaluation.cautionsAcknowledged, true);
    assert.ok(evaluation.cautions.length > 0);
    assert.equal(evaluateSheet(sheet('title: Shed', shed)).cautionsAcknowledged, false);
  });
});
