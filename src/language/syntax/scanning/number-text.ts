import { isDigit } from './characters';

/** Powers of ten that are exact as floats, so that one division gives the correctly rounded value. */
const exactPowers = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
const exactDigits = 15;

export interface NumberText {
  /** Where the number ends. */
  end: number;
  value: number;
  /** Digits after the decimal point in the exponent's scale: 2 for `13.21`, -1 for `1.25e3`. */
  decimals: number;
}

/** Reads the number that begins at `at` into `into`: digits, a point with digits behind it, an exponent. */
export function readNumber(text: string, at: number, into: NumberText): void {
  let offset = at;
  let mantissa = 0;
  let digits = 0;
  let decimals = 0;
  let c = text.charCodeAt(offset);
  for (; isDigit(c); c = text.charCodeAt(++offset)) {
    mantissa = mantissa * 10 + (c - 48);
    digits++;
  }
  if (c === 46 && isDigit(text.charCodeAt(offset + 1))) {
    c = text.charCodeAt(++offset);
    for (; isDigit(c); c = text.charCodeAt(++offset)) {
      mantissa = mantissa * 10 + (c - 48);
      digits++;
      decimals++;
    }
  }
  let exponent = 0;
  if (c === 101 || c === 69) {
    const sign = text.charCodeAt(offset + 1);
    let digit = sign === 43 || sign === 45 ? offset + 2 : offset + 1;
    if (isDigit(text.charCodeAt(digit))) {
      for (; isDigit(text.charCodeAt(digit)); digit++) {
        exponent = Math.min(exponent * 10 + (text.charCodeAt(digit) - 48), 9999);
      }
      exponent = sign === 45 ? -exponent : exponent;
      offset = digit;
    }
  }
  const power = exponent - decimals;
  into.end = offset;
  into.decimals = Math.max(-128, Math.min(127, -power));
  into.value =
    digits <= exactDigits && power <= 0 && power >= -22
      ? mantissa / exactPowers[-power]
      : Number(text.slice(at, offset));
}
