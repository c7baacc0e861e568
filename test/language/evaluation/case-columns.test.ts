import assert from 'node:assert/strict';
import fc from 'fast-check';
import { CaseColumns } from '../../../src/language/evaluation/cases/case-columns';
import type { Piece } from '../../../src/language/evaluation/cases/column-loop';
import { host } from '../../../src/language/evaluation/cases/wasm-module';
import { Machine } from '../../../src/language/evaluation/machine';
import { Operation } from '../../../src/language/evaluation/operations';

/** Numbers at which arithmetic turns: zeros with a sign, what is not finite, neighbours nearer than rounding. */
const number = fc.oneof(
  fc.constantFrom(0, -0, 1, 0.5, -1, 2, Infinity, -Infinity, NaN, 1e308, -1e308, 5e-324, 1 + 5e-13, 1 + 2e-12),
  fc.double(),
);

const step = fc.record({
  operation: fc.integer({ min: Operation.Copy, max: Operation.Not }),
  a: fc.nat(),
  b: fc.nat(),
  target: fc.nat({ max: 2 }),
});

const work = fc.record({
  constants: fc.array(number, { minLength: 1, maxLength: 4 }),
  pieces: fc.array(fc.array(step, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 30 }),
  cases: fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 9 }),
});

/** Pieces over two inputs, constants and earlier results, each with temporaries that later ones use again. */
function build({ constants, pieces }: { constants: readonly number[]; pieces: readonly (readonly Step[])[] }) {
  const machine = new Machine();
  for (const compute of [Math.sqrt, Math.abs, Math.sin]) {
    machine.addFunction(compute, () => 0);
  }
  const inputs = [machine.allocate(1), machine.allocate(1)];
  const known = [...inputs, ...constants.map((constant) => machine.constant(constant))];
  const temporaries = [0, 1, 2].map(() => machine.allocate(1));
  const built: Piece[] = pieces.map((steps) => {
    const slot = machine.allocate(1);
    const start = machine.codeLength;
    const own = new Set<number>();
    for (const [i, { operation, a, b, target }] of steps.entries()) {
      const from = [...known, ...own];
      const to = i === steps.length - 1 ? slot : temporaries[target];
      const second = operation === Operation.One ? b % 3 : from[b % from.length];
      machine.emit(operation, to, from[a % from.length], second);
      own.add(to);
    }
    known.push(slot);
    return { start, end: machine.codeLength, slot };
  });
  return { machine, inputs, pieces: built };
}

type Step = { readonly operation: Operation; readonly a: number; readonly b: number; readonly target: number };

const refusing = {
  Memory: host()!.Memory,
  Instance: host()!.Instance,
  Module: class {
    constructor() {
      throw new Error('Not in this host.');
    }
  },
};

describe('results of many cases', () => {
  it('are the machine’s to the last bit, with WebAssembly, without it, and where the host refuses it', () => {
    fc.assert(
      fc.property(work, ({ constants, pieces: steps, cases }) => {
        const { machine, inputs, pieces } = build({ constants, pieces: steps });
        const before = machine.numbers.slice();
        const ways = [host(), undefined, refusing].map(
          (allowed) => new CaseColumns(machine, inputs, pieces, cases.length, allowed ?? null),
        );
        for (const columns of ways) {
          for (const [i, slot] of inputs.entries()) {
            columns.column(slot).set(cases.map((values) => values[i]));
          }
          columns.run(cases.length);
        }
        for (const [at, values] of cases.entries()) {
          machine.numbers.set(before);
          for (const [i, slot] of inputs.entries()) {
            machine.numbers[slot] = values[i];
          }
          machine.run(0, machine.codeLength);
          for (const { slot } of pieces) {
            const expected = machine.numbers[slot];
            assert.deepEqual(
              ways.map((columns) => columns.column(slot)[at]),
              ways.map(() => expected),
            );
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it('are all there where they fill more than one block', () => {
    const { machine, inputs, pieces } = build({
      constants: [3],
      pieces: [[{ operation: Operation.Multiply, a: 0, b: 1, target: 0 }]],
    });
    const count = 2049;
    for (const allowed of [host(), null]) {
      const columns = new CaseColumns(machine, inputs, pieces, count, allowed);
      columns.column(inputs[0]).set(Float64Array.from({ length: count }, (_, i) => i));
      columns.column(inputs[1]).fill(0.1);
      columns.run(count);
      assert.deepEqual(
        columns.column(pieces[0].slot),
        Float64Array.from({ length: count }, (_, i) => i * 0.1),
      );
    }
  });
});
