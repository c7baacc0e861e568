import assert from 'node:assert/strict';
import type { Uncertainty } from '../../../src/language';
import { programOf, valueOf } from '../run-cells';

/** What is known of the last value of a cell. */
function known(text: string): Uncertainty & { readonly base: number } {
  const value = valueOf(text);
  assert.ok(value.kind === 'quantity' && value.uncertainty, text);
  return { ...value.uncertainty, base: value.base };
}

function alike(actual: string, expected: string, relative = 1e-9): void {
  const [a, b] = [known(actual), known(expected)];
  for (const key of ['base', 'standard', 'low', 'high', 'coverageFactor', 'limits'] as const) {
    const [x, y] = [a[key] ?? 0, b[key] ?? 0]; // No limits where a source states none.
    assert.ok(Math.abs(x - y) <= relative * Math.abs(y), `${key}: ${x} is not ${y}\n${actual}`);
  }
  assert.deepEqual(
    a.sources.map(({ name }) => name),
    b.sources.map(({ name }) => name),
  );
}

const readings = [
  'pocket = meter(reading: 0.8 %, digits: 5)',
  'u = 207.6 V by pocket',
  'r = 13.21 Ω ± 0.1 Ω',
  'p = measured(3.2 kW, standard: 30 W)',
  '',
].join('\n');

describe('doubt goes through solving', () => {
  it('by formula, as through the explicit one', () => {
    alike(`${readings}solve i\n  u == i * r\ni`, `${readings}u / r`);
    alike(`${readings}solve i, v\n  p == v * i\n  v == i * r\ni`, `${readings}sqrt(p / r)`);
    alike(`${readings}solve i, v\n  p == v * i\n  v == i * r\nv`, `${readings}sqrt(p * r)`);
  });

  it('by search, by implicit differentiation', () => {
    // The same equation made one that no formula gives: abs is not turned round.
    alike(`${readings}solve i in 1 A .. 90 A\n  abs(u) == abs(i * r)\ni`, `${readings}u / r`);
    alike(`${readings}solve i in 1 A .. 90 A\n  p == abs(i^2 * r)\ni`, `${readings}sqrt(p / r)`);
    // Through a function of the library, whose slope is taken by differences.
    alike(`${readings}solve i in 0 A .. 90 A\n  drop(i).volts * 7 == u\ni`, `${readings}(u / (1 V)) * 1 A / 7`, 1e-7);
  });

  it('of linear equations solved together, each reading being one source wherever it stands', () => {
    const system = 'solve a, b, c\n  a == b + c\n  u == a * r + b * (5 Ω)\n  b * (5 Ω) == c * (7 Ω ± 0.2 Ω)\n';
    const left = `${readings}${system}`;
    // By hand: the two parallel branches make 5 Ω × q / (5 Ω + q).
    const hand = `${readings}q = 7 Ω ± 0.2 Ω\nwhole = r + 5 Ω * q / (5 Ω + q)\ncurrent = u / whole\n`;
    alike(`${left}a`, `${hand}current`);
    alike(`${left}b`, `${hand}current * q / (5 Ω + q)`);
    alike(`${left}c`, `${hand}current * (5 Ω) / (5 Ω + q)`);
    // What the equations say of the results holds without doubt.
    const difference = valueOf(`${left}a - b - c`);
    assert.ok(difference.kind === 'quantity');
    assert.ok((difference.uncertainty?.standard ?? 0) < 1e-12);
  });

  it('counts a reading inside the equations once, in however many formulas it comes to stand', () => {
    const system = 'solve x, y\n  x + y == 10 A ± 0.1 A\n  x - y == 2 A\n';
    const sum = known(`${system}x + y`);
    const plain = known('10 A ± 0.1 A');
    assert.ok(Math.abs(sum.standard - plain.standard) <= 1e-12);
    assert.equal(sum.sources.length, 1);
    const difference = valueOf(`${system}x - y`);
    assert.ok(difference.kind === 'quantity' && difference.uncertainty === undefined);
  });

  it('says so where the doubt leaves open whether there is a solution', () => {
    const program = programOf('solve x in 0 .. 3\n  cos(x - 1) == 1 ± 0.01');
    assert.deepEqual(
      program.diagnostics('0').map(({ code }) => code),
      ['cannot-tell'],
    );
  });
});
