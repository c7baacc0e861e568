import assert from 'node:assert/strict';
import { evaluateSheet, formatSheet, writeResults } from '../../src/session';

const text = '---\ntitle: T\nformat: 2\n---\n\n```kft\nx=3 V\n```\n';
const bytes = new TextEncoder().encode(text);

describe('a sheet in a later format', () => {
  it('is evaluated, and says at its line that its results are not to be relied on', () => {
    const { ok, values, diagnostics } = evaluateSheet(bytes);
    assert.equal(values.size, 1);
    assert.equal(ok, false);
    const [problem] = diagnostics;
    assert.deepEqual([problem.code, problem.line, problem.column], ['newer-format', 3, 9]);
  });

  it('is neither laid out nor given results', () => {
    const formatted = formatSheet(bytes);
    assert.ok('problem' in formatted && /Update Kilofoot/.test(formatted.problem.message));
    assert.equal(writeResults(evaluateSheet(bytes)), undefined);
    assert.ok(writeResults(evaluateSheet(text.replace('2', '1'))), 'of this format it is');
  });
});
