import fc from 'fast-check';
import type { Piece } from '../../../src/language/evaluation/cases/column-loop';
import { Machine } from '../../../src/language/evaluation/machine';
import { Operation } from '../../../src/language/evaluation/operations';

/** Numbers at which arithmetic turns: zeros with a sign, what is not finite, neighbours nearer than rounding. */
export const number = fc.oneof(
  fc.constantFrom(0, -0, 1, 0.5, -1, 2, Infinity, -Infinity, NaN, 1e308, -1e308, 5e-324, 1 + 5e-13, 1 + 2e-12),
  fc.double(),
);

interface Step {
  readonly operation: Operation;
  readonly a: number;
  readonly b: number;
  readonly target: number;
}

export interface Work {
  readonly constants: readonly number[];
  readonly pieces: readonly (readonly Step[])[];
  readonly cases: readonly (readonly [number, number])[];
}

/** Work that does nothing but these operations. */
export const workOf = (operations: readonly Operation[]): fc.Arbitrary<Work> => {
  const step = fc.record({
    operation: fc.constantFrom(...operations),
    a: fc.nat(),
    b: fc.nat(),
    target: fc.nat({ max: 2 }),
  });
  return fc.record({
    constants: fc.array(number, { minLength: 1, maxLength: 4 }),
    pieces: fc.array(fc.array(step, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 30 }),
    cases: fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 9 }),
  });
};

/** Pieces over two inputs, constants and earlier results, each with temporaries that later ones use again. */
export function build({ constants, pieces }: Pick<Work, 'constants' | 'pieces'>) {
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
      // What was computed last is used more often, as in an expression.
      const from = [...known, ...own, ...own, ...own];
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
