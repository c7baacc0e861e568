import assert from 'node:assert/strict';
import fc from 'fast-check';
import { programOf } from '../run-cells';

/** Expressions of one unknown and plain numbers. */
const expression: fc.Arbitrary<string> = fc.letrec<{ any: string }>((tie) => ({
  any: fc.oneof(
    { depthSize: 'medium' },
    { weight: 3, arbitrary: fc.constant('x') },
    { weight: 2, arbitrary: fc.integer({ min: 1, max: 9 }).map(String) },
    {
      weight: 3,
      arbitrary: fc
        .tuple(tie('any'), fc.constantFrom('+', '-', '*', '/'), tie('any'))
        .map(([a, operator, b]) => `(${a} ${operator} ${b})`),
    },
    tie('any').map((inner) => `sqrt(${inner})`),
    tie('any').map((inner) => `(${inner})^2`),
    tie('any').map((inner) => `exp(${inner} / 10)`),
    tie('any').map((inner) => `sin(${inner})`),
  ),
})).any;

describe('what solve finds satisfies its equations', () => {
  const isNear = (left: number, right: number, scale: number) => Math.abs(left - right) <= 1e-6 * Math.max(scale, 1e-3);

  it('one equation, by formula or by search, whenever it gives a value', () => {
    let solved = 0;
    fc.assert(
      fc.property(expression, expression, fc.constantFrom('', ' in 0 .. 5', ' in -20 .. 20'), (left, right, bounds) => {
        const program = programOf(`solve x${bounds}\n  ${left} == ${right}\nleft = ${left}\nright = ${right}`);
        const [x, ...sides] = program
          .results('0')
          .map(({ value }) => (value?.kind === 'quantity' ? value.base : undefined));
        if (x === undefined) {
          return;
        }
        const [a, b] = sides;
        assert.ok(a !== undefined && b !== undefined, `${left} == ${right} at ${x}`);
        assert.ok(isNear(a, b, Math.max(Math.abs(a), Math.abs(b))), `${left} == ${right} at ${x}: ${a}, ${b}`);
        solved++;
      }),
      { numRuns: 1500 },
    );
    assert.ok(solved > 300, `only ${solved} had a value`);
  });

  it('linear equations of two to five unknowns give back the values that they were made from', () => {
    const size = fc.integer({ min: 2, max: 5 });
    const system = size.chain((n) =>
      fc.record({
        values: fc.array(fc.integer({ min: -9, max: 9 }), { minLength: n, maxLength: n }),
        rows: fc.array(fc.array(fc.integer({ min: -5, max: 5 }), { minLength: n, maxLength: n }), {
          minLength: n,
          maxLength: n,
        }),
      }),
    );
    fc.assert(
      fc.property(system, ({ values, rows }) => {
        const names = values.map((_, i) => `v${i}`);
        // A strong diagonal keeps the equations independent.
        const matrix = rows.map((row, i) => row.map((r, j) => (i === j ? r + Math.sign(r || 1) * 30 : r)));
        const equations = matrix.map((row) => {
          const sum = row.reduce((total, r, j) => total + r * values[j], 0);
          return `  ${row.map((r, j) => `${r} * ${names[j]}`).join(' + ')} == ${sum}`;
        });
        const program = programOf([`solve ${names.join(', ')}`, ...equations].join('\n'));
        for (const [i, { value }] of program.results('0').entries()) {
          const message = [...equations, ...program.diagnostics('0').map((d) => d.message)].join('\n');
          assert.ok(value?.kind === 'quantity' && Math.abs(value.base - values[i]) < 1e-9, message);
        }
      }),
      { numRuns: 200 },
    );
  });
});
