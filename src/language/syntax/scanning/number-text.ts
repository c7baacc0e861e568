import type { Codes } from '../../../text';
import { isDigit } from './characters';

/** Powers of ten that are exact as floats, so that one division gives the correctly rounded value. */
const exactPowers = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
const exactDigits = 15;

export interface NumberText {
  value: number;
  /** Digits after the decimal point in the exponent's scale: 2 for `13.21`, -1 for `1.25e3`. */
  decimals: number;
}

/** Reads the number that begins at `at` into `into`: digits, a point with digits behind it, an exponent. Returns its end. */
export function readNumber(text: string, codes: Codes, at: number, into: NumberText): number {
  let offset = at;
  let mantissa = 0;
  let digits = 0;
  let decimals = 0;
  let c = codes[offset];
  for (; isDigit(c); c = codes[++offset]) {
    mantissa = mantissa * 10 + (c - 48);
    digits++;
  }
  if (c === 46 && isDigit(codes[offset + 1])) {
    c = codes[++offset];
    for (; isDigit(c); c = codes[++offset]) {
      mantissa = mantissa * 10 + (c - 48);
      digits++;
      decimals++;
    }
  }
  let exponent = 0;
  if (c === 101 || c === 69) {
    const sign = codes[offset + 1];
    let digit = sign === 43 || sign === 45 ? offset + 2 : offset + 1;
    if (isDigit(codes[digit])) {
      for (; isDigit(codes[digit]); digit++) {
        exponent = Math.min(exponent * 10 + (codes[digit] - 48), 9999);
      }
      exponent = sign === 45 ? -exponent : exponent;
      offset = digit;
    }
  }
  const power = exponent - decimals;
  into.decimals = Math.max(-128, Math.min(127, -power));
  into.value =
    digits <= exactDigits && power <= 0 && power >= -22
      ? mantissa / exactPowers[-power]
      : Number(text.slice(at, offset));
  return offset;
}
