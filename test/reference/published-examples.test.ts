import assert from 'node:assert/strict';
import { rules, type SheetEvaluation } from '../../src/core';
import { collections, examples, notYet } from './example';
import { assertExpected, halfLastDigit, runExample, titleOf } from './run-example';

describe('published examples', () => {
  it('each has an id of its own', () => {
    assert.equal(new Set(examples.map(({ id }) => id)).size, examples.length);
  });

  for (const { name, id, answers } of collections) {
    it(`${name}: every one of ${answers} runs, or is listed as not yet proved`, () => {
      const whole = [...examples, ...notYet.filter(({ part }) => part === undefined)].filter((e) => id.test(e.id));
      assert.equal(new Set(whole.map((e) => e.id)).size, answers);
      assert.equal(whole.length, answers, 'one is listed twice');
    });
  }

  it('a part that is not proved belongs to an example that runs', () => {
    const ids = new Set(examples.map((example) => example.id));
    assert.deepEqual(
      notYet.filter(({ id, part }) => part !== undefined && !ids.has(id)),
      [],
    );
  });

  it('each expects something, and says why where ours differs', () => {
    for (const { id, expect, speaks, silent } of examples) {
      assert.ok(expect.length + (speaks?.length ?? 0) + (silent?.length ?? 0) > 0, id);
      for (const expected of expect) {
        assert.ok(!('ours' in expected && expected.ours !== undefined) || expected.why, id);
      }
    }
  });

  it('names only lints that there are', () => {
    const known = new Set<string>(rules.map((rule) => rule.id));
    const named = examples.flatMap(({ speaks = [], silent = [] }) => [...speaks, ...silent]);
    assert.deepEqual(
      named.filter((lint) => !known.has(lint)),
      [],
    );
  });

  it('reads a figure’s precision from its last digit', () => {
    for (const [printed, half] of [
      ['4.99', 0.005],
      ['250', 0.5],
      ['1.1e3', 50],
      ['2.65e-6', 0.5e-8],
    ] as const) {
      assert.ok(Math.abs(halfLastDigit(printed) - half) < 1e-12 * half, printed);
    }
  });

  for (const example of examples) {
    const { id, source, expect, speaks = [], silent = [] } = example;
    describe(`${id}: ${source}`, () => {
      let sheet: SheetEvaluation;
      before(() => {
        sheet = runExample(example);
      });

      expect.forEach((expected, index) => {
        it(titleOf(expected), () => assertExpected(sheet, expected, index));
      });
      const heard = () => sheet.diagnostics.map(({ code }): string => code);
      for (const lint of speaks) {
        it(`${lint} speaks`, () => assert.ok(heard().includes(lint), `heard: ${heard().join(', ') || 'nothing'}`));
      }
      for (const lint of silent) {
        it(`${lint} is silent`, () => assert.ok(!heard().includes(lint), `heard: ${heard().join(', ')}`));
      }
    });
  }
});
