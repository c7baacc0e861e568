import assert from 'node:assert/strict';
import fc from 'fast-check';
import { mathsText } from '../../src/display';
import { roundForCheck } from '../../src/display/comparison';
import { binary, literal, quantity, uncertain, value } from './values';

describe('the sides of a check', () => {
  it('get as many digits as the verdict needs', () => {
    const drop = binary(value(3.00004, '%'), '<=', literal('3', '%'));
    assert.equal(mathsText(roundForCheck(drop, 'no')), '3.00004 % ≤ 3 %');
    const close = binary(value(15.00001, 'A'), '<', value(15.00002, 'A'));
    assert.equal(mathsText(roundForCheck(close, 'yes')), '15.00001 A < 15.00002 A');
    assert.equal(mathsText(roundForCheck(binary(value(2.0594, '%'), '<=', literal('3', '%')), 'yes')), '2.059 % ≤ 3 %');
    const mixed = binary(value(0.4000001, 'kA'), '<=', literal('400', 'A'));
    assert.equal(mathsText(roundForCheck(mixed, 'no')), '0.4000001 kA ≤ 400 A');
  });

  it('keep the limits of what is uncertain', () => {
    const current = { kind: 'value', value: uncertain(15.72, 'A', 15.5, 15.94) } as const;
    assert.equal(
      mathsText(roundForCheck(binary(current, '<=', literal('15.8', 'A')), 'cannot tell')),
      '15.72 A ± 0.22 A ≤ 15.8 A',
    );
  });

  it('never look like the other verdict, whatever the numbers', () => {
    const number = fc.double({ min: -1e8, max: 1e8, noNaN: true });
    fc.assert(
      fc.property(number, fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 1e-3 })), (limit, excess) => {
        const over = limit + Math.abs(limit) * excess;
        const holds = over <= limit;
        const left = { kind: 'value', value: quantity(over, 'V') } as const;
        const right = { kind: 'value', value: quantity(limit, 'V') } as const;
        const text = mathsText(roundForCheck(binary(left, '<=', right), holds ? 'yes' : 'no'));
        const [a, b] = text.replaceAll(',', '').split(' ≤ ').map(readNumber);
        assert.equal(a <= b, holds, text);
      }),
    );
  });
});

/** `1.5 × 10⁻⁵ V` as a number. */
function readNumber(text: string): number {
  const digits = [...text]
    .map((c) => ('⁰¹²³⁴⁵⁶⁷⁸⁹'.includes(c) ? '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c) : c === '⁻' ? '-' : c))
    .join('');
  return Number(digits.replace(' V', '').replace(' × 10', 'e'));
}
