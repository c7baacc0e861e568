import assert from 'node:assert/strict';
import { showValue } from '../../../src/display';
import { programOf, valueOf } from '../run-cells';

const answer = (text: string) => {
  const value = valueOf(text);
  assert.ok(value.kind === 'boolean');
  return value.value === 'cannot tell' ? value.value : value.value ? 'yes' : 'no';
};
const problems = (text: string) => programOf(text).diagnostics('0');

describe('a reading over range', () => {
  it('is more than the end of the range, however it is written', () => {
    assert.equal(showValue(valueOf('r = OL 60 MΩ')), showValue(valueOf('r = over range 60 MΩ')));
    assert.match(showValue(valueOf('r = OL 60 MΩ')), /60 MΩ/);
    const value = valueOf('r = OL 60 MΩ');
    assert.ok(value.kind === 'quantity');
    assert.deepEqual([value.uncertainty?.low, value.uncertainty?.high], [6e7, Number.POSITIVE_INFINITY]);
  });

  for (const [comparison, expected] of [
    ['r >= 1 MΩ', 'yes'],
    ['r > 60 MΩ', 'yes'],
    ['1 MΩ < r', 'yes'],
    ['r > 100 MΩ', 'cannot tell'],
    ['r >= 60.1 MΩ', 'cannot tell'],
    ['r < 1 MΩ', 'no'],
    ['r <= 60 MΩ', 'no'],
    ['1 MΩ >= r', 'no'],
    ['100 MΩ > r', 'cannot tell'],
    ['r == 5 MΩ', 'no'],
    ['r != 5 MΩ', 'yes'],
    ['r == 70 MΩ', 'cannot tell'],
    ['r == r', 'cannot tell'],
    ['r > 59.9 MΩ ± 0.05 MΩ', 'yes'],
    ['r > 60 MΩ ± 1 MΩ', 'cannot tell'],
    ['not (r < 1 MΩ)', 'yes'],
    ['r > 100 MΩ or r > 1 MΩ', 'yes'],
  ]) {
    it(`answers ${expected} to ${comparison}`, () => {
      assert.equal(answer(`r = OL 60 MΩ\na = ${comparison}`), expected);
    });
  }

  it('names what would settle a check that it leaves open', () => {
    const value = valueOf('r = OL 60 MΩ\ncheck r >= 100 MΩ "insulation"');
    assert.ok(value.kind === 'boolean' && value.doubt);
    assert.equal(value.doubt.dominant, '`r`');
    assert.match(value.doubt.advice, /higher range/);
  });

  for (const [text, code, message] of [
    ['r = OL', 'over-range', /Write the end of its range/],
    ['r = OL 60 MΩ\nx = r * 2', 'over-range', /nothing can be worked out/],
    ['r = OL 60 MΩ\nx = 1 V / r', 'over-range', /nothing can be worked out/],
    ['r = OL 60 MΩ\nx = [r, r]', 'over-range', /nothing can be worked out/],
    ['r = OL 60 MΩ\nx = drop(r)', 'wrong-argument', /a reading over range \(MΩ\)/],
    ['r = OL 60 MΩ\nx = r > 3 A', 'unlike-quantities', /only like quantities compare/],
    ['x = if yes then OL 5 V else OL 5 A', 'unlike-branches', /both must be of one type/],
    ['r = OL 60 MΩ\nx = if r > 100 MΩ then 1 else 2', 'cannot-tell', /cannot tell/],
  ] as const) {
    it(`refuses ${text.split('\n').at(-1)}`, () => {
      const [found] = problems(text);
      assert.equal(found?.code, code);
      assert.match(found.message, message);
    });
  }
});
