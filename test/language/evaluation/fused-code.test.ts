import assert from 'node:assert/strict';
import fc from 'fast-check';
import { FusedCode } from '../../../src/language/evaluation/fused/fused-code';
import { Operation } from '../../../src/language/evaluation/operations';
import { build, workOf } from './pieces-arbitrary';

const { Copy, Add, Subtract, Multiply, Divide, Negate, Power } = Operation;

describe('fused code', () => {
  for (const [what, operations] of [
    ['arithmetic', [Add, Subtract, Multiply, Divide]],
    ['what is fused beside what is not', [Copy, Add, Subtract, Multiply, Divide, Negate, Power]],
  ] as const) {
    it(`gives the machine’s results to the last bit: ${what}`, () => {
      let instructions = 0;
      fc.assert(
        fc.property(workOf(operations), (work) => {
          const { machine, inputs, pieces } = build(work);
          const fused = new FusedCode(
            machine,
            pieces.map((piece) => ({ ...piece, size: 1 })),
          );
          for (const values of work.cases) {
            const results = [() => machine.run(0, machine.codeLength), () => fused.run()].map((run) => {
              for (const [i, slot] of inputs.entries()) {
                machine.numbers[slot] = values[i];
              }
              run();
              return pieces.map(({ slot }) => machine.numbers[slot]);
            });
            assert.deepEqual(results[1], results[0]);
            instructions += results[0].length;
          }
        }),
        { numRuns: 400 },
      );
      assert.ok(instructions > 1000);
    });
  }
});
