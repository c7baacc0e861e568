import assert from 'node:assert/strict';
import { mathematics } from '../../../src/language';
import { shown, valueOf } from '../run-cells';

describe('plain mathematics', () => {
  for (const { name, examples } of mathematics) {
    it(`${name} gives what its examples say`, () => {
      assert.notEqual(examples.length, 0);
      for (const { text, gives } of examples) {
        assert.equal(shown(valueOf(text)), gives, text);
      }
    });
  }

  it('slopes are the derivatives', () => {
    const at = 0.37;
    const step = 1e-6;
    for (const { name, operation } of mathematics) {
      if (operation.kind === 'one') {
        const difference = (operation.compute(at + step) - operation.compute(at - step)) / (2 * step);
        assert.ok(Math.abs(operation.slope(at) - difference) < 1e-8, name);
      }
    }
  });
});
