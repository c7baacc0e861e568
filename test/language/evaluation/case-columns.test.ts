import assert from 'node:assert/strict';
import fc from 'fast-check';
import { CaseColumns } from '../../../src/language/evaluation/cases/case-columns';
import { host } from '../../../src/language/evaluation/cases/wasm-module';
import { Operation } from '../../../src/language/evaluation/operations';
import { build, workOf } from './pieces-arbitrary';

const all = Array.from({ length: Operation.Not + 1 }, (_, operation) => operation as Operation);

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
      fc.property(workOf(all), (work) => {
        const { cases } = work;
        const { machine, inputs, pieces } = build(work);
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
