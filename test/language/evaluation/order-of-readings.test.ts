import assert from 'node:assert/strict';
import fc from 'fast-check';
import { SheetProgram } from '../../../src/language/program/sheet-program';
import { smallLibrary } from '../small-library';

/** Readings of unlike sizes and kinds, so that a sum over them in another order has other last bits. */
const readings = [
  'a = 13.21 Ω ± 0.07 Ω',
  'b = measured(7.77 Ω, standard: 0.013 Ω)',
  'c = 101.3 Ω ± 0.9 Ω',
  'd = 0.331 Ω ± 0.0017 Ω',
  'e = 47.1 Ω ± 2 %',
  'f = measured(3.3 Ω, standard: 0.011 Ω, with: a, correlation: 0.3, with: b, correlation: 0.2)',
];

const formulas = [
  'q = (a * b / (a + b) + c + d / e * f) / 2',
  'r = sqrt(q * q + c * c) - 2 * d + f',
  's = [a, b, c, d, e, f]',
  't = sum(s) * r / q',
  'u = max(q, r) * 1.1',
  'check t <= 383 Ω',
];

const lines = [...readings, ...formulas];

/** Everything that the values say, lists of sources included. */
const results = (program: SheetProgram): string[] =>
  lines.map((_, i) => JSON.stringify(program.results(String(i))[0].value));

describe('the order in which readings were made', () => {
  it('changes no bit of what is told of them', () => {
    const whole = new SheetProgram(smallLibrary);
    const cells = lines.map((text, i) => ({ id: String(i), text }));
    whole.update(cells);
    const expected = results(whole);
    assert.ok(
      expected.every((value) => value.includes('standard') || value.includes('cannot tell')),
      expected.join(),
    );
    fc.assert(
      fc.property(fc.shuffledSubarray([...cells], { minLength: cells.length }), (order) => {
        const program = new SheetProgram(smallLibrary);
        for (let i = 1; i <= order.length; i++) {
          program.update(order.slice(0, i));
        }
        assert.deepEqual(results(program), expected);
        program.evaluate();
        assert.deepEqual(results(program), expected, 'evaluated again');
      }),
      { numRuns: 60 },
    );
  });
});
