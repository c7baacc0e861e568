import assert from 'node:assert/strict';
import { inUnit, near, run, stepsOf } from './sheet';

const assumptions = (text: string) => stepsOf(text).flatMap((step) => (step.kind === 'assumption' ? [step.text] : []));

describe('readings of insulation and windings', () => {
  // Source: IEEE 43, from memory: above 5000 MΩ after one minute the index says little.
  it('say where the polarization index has no meaning', () => {
    const saidOf = (one: string) => assumptions(`x = polarization_index(12000 MΩ, ${one})`).join(' ');
    assert.match(saidOf('5500 MΩ'), /above 5000 MΩ/);
    assert.doesNotMatch(saidOf('4500 MΩ'), /above 5000 MΩ/);
  });

  // Common practice, no source: three windings of a motor are compared by their distance from the mean.
  it('compare three windings', () => {
    near(inUnit('x = unbalance(1.21 Ω, 1.24 Ω, 1.18 Ω)', '%'), (0.03 / 1.21) * 100, 1e-9);
    const mixed = run('x = unbalance(1.21 Ω, 1.24 V, 1.18 Ω)').diagnostics;
    assert.deepEqual(
      mixed.map(({ code }) => code),
      ['mixed-units'],
    );
  });
});
