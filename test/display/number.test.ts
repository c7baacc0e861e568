import assert from 'node:assert/strict';
import fc from 'fast-check';
import { showNumber, withoutNoise } from '../../src/display';
import { numberLatex, roundNumber, valueOf } from '../../src/display/number';

describe('showNumber', () => {
  const cases: readonly (readonly [number, string])[] = [
    [17.4454, '17.45'],
    [17.4, '17.4'],
    [5, '5'],
    [0, '0'],
    [-0, '0'],
    [-2.71846, '-2.718'],
    [9.99996, '10'],
    [999.96, '1000'],
    [1234.5, '1235'],
    [12345.6, '12,346'],
    [10380, '10,380'],
    [123456789, '123,456,789'],
    [999999999.9, '1,000,000,000'],
    [1e9, '1 × 10⁹'],
    [2.5e12, '2.5 × 10¹²'],
    [0.00323, '0.00323'],
    [0.001, '0.001'],
    [0.00099999, '0.001'],
    [0.00012346, '1.235 × 10⁻⁴'],
    [Number.NaN, 'not a number'],
    [Number.NEGATIVE_INFINITY, '-∞'],
  ];
  for (const [number, text] of cases) {
    it(`shows ${number} as ${text}`, () => assert.equal(showNumber(number), text));
  }

  it('groups thousands in LaTeX without a space', () => {
    assert.equal(numberLatex(roundNumber(12345.6)), '12{,}346');
    assert.equal(numberLatex(roundNumber(1.5e-7)), '1.5\\times 10^{-7}');
  });

  it('is right to the digits asked for, and never loses a digit before the point', () => {
    const digits = fc.integer({ min: 1, max: 15 });
    fc.assert(
      fc.property(fc.double({ min: -1e300, max: 1e300, noNaN: true }), digits, (number, count) => {
        const error = Math.abs(valueOf(roundNumber(number, count)) - number);
        assert.ok(error <= Math.abs(number) * 0.5000001 * 10 ** (1 - count) + Number.MIN_VALUE * 4);
        assert.ok(Math.abs(number) >= 1e9 || error <= 0.5);
      }),
    );
  });

  it('writes out everything from 0.001 to 1,000,000,000', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 9.99e8, noNaN: true }), (number) => {
        assert.doesNotMatch(showNumber(number), /e|×/);
      }),
    );
  });
});

describe('a number for a table that programs read', () => {
  it('loses what a conversion leaves in the last bit, and nothing more', () => {
    assert.equal(withoutNoise((7 * 0.3048) / 0.3048), 7);
    assert.equal(withoutNoise(0.1 + 0.2), 0.3);
    fc.assert(
      fc.property(fc.double({ noNaN: true }), (value) => {
        assert.ok(Math.abs(withoutNoise(value) - value) <= 1e-14 * Math.abs(value));
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999_999 }), fc.integer({ min: -12, max: 4 }), (digits, exponent) => {
        const value = Number(`${digits}e${exponent}`);
        assert.equal(withoutNoise(value), value);
      }),
    );
  });
});
