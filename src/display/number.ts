/** Significant digits of a computed number, unless more are needed to tell it from another. */
export const usualDigits = 4;

/** A number rounded for people, before it is made text or LaTeX. */
export interface RoundedNumber {
  readonly negative: boolean;
  readonly whole: string;
  /** Without the point; empty when there is none. */
  readonly fraction: string;
  /** Power of ten, for numbers too large or too small to be written out. */
  readonly exponent?: number;
}

/**
 * Rounds to `digits` significant digits, but never rounds away a digit before the point: 12,345.6 is 12,346 and not
 * 12,350. Trailing zeros go. From 0.001 up to 1,000,000,000 numbers are written out.
 */
export function roundNumber(value: number, digits: number = usualDigits): RoundedNumber {
  const magnitude = Math.abs(value);
  if (magnitude === 0) {
    return { negative: false, whole: '0', fraction: '' };
  }
  if (needsExponent(magnitude)) {
    const [mantissa, exponent] = magnitude.toExponential(digits - 1).split('e');
    if (Number(exponent) < -3 || Number(exponent) >= 9) {
      return { ...split(mantissa, value < 0), exponent: Number(exponent) };
    }
  }
  return split(magnitude.toFixed(decimalsFor(magnitude, digits)), value < 0);
}

/**
 * Rounds to the place `10^-decimals`, which may lie before the point, and keeps trailing zeros, as a value beside its
 * uncertainty is written. `exponent` is taken out first.
 */
export function roundToPlace(value: number, decimals: number, exponent = 0): RoundedNumber {
  const scaled = Math.abs(value) / 10 ** exponent;
  const place = 10 ** Math.max(0, -decimals);
  const text = (Math.round(scaled / place) * place).toFixed(0);
  const [whole, fraction = ''] = (decimals > 0 ? scaled.toFixed(Math.min(decimals, 100)) : text).split('.');
  const negative = value < 0 && /[1-9]/.test(whole + fraction);
  return exponent === 0 ? { negative, whole, fraction } : { negative, whole, fraction, exponent };
}

/**
 * A number for a table that other programs read: to 15 digits, which drops what a conversion leaves in the last bit (7 ft
 * kept in metres is 6.999999999999999 ft) and nothing that anybody measured.
 */
export function withoutNoise(value: number): number {
  const magnitude = Math.abs(value);
  if (!(magnitude >= 1e-7 && magnitude < 1e15)) {
    return value;
  }
  // Both operands of the division are whole numbers that a double holds exactly, so the quotient is the nearest one.
  const scale = 10 ** (14 - Math.floor(Math.log10(magnitude)));
  return Math.round(value * scale) / scale;
}

/** The number that a reader of the rounded text takes it for. */
export function valueOf({ negative, whole, fraction, exponent = 0 }: RoundedNumber): number {
  return Number(`${negative ? '-' : ''}${whole}.${fraction || '0'}e${exponent}`);
}

/** `12,346`, `-0.0315`, `1.5 × 10⁻⁵`. */
export function numberText(number: RoundedNumber): string {
  const digits = sign(number) + group(number.whole, ',') + (number.fraction && `.${number.fraction}`);
  return number.exponent === undefined ? digits : `${digits} × 10${superscript(number.exponent)}`;
}

export function numberLatex(number: RoundedNumber): string {
  const digits = sign(number) + group(number.whole, '{,}') + (number.fraction && `.${number.fraction}`);
  return number.exponent === undefined ? digits : `${digits}\\times 10^{${number.exponent}}`;
}

/** `showNumber(17.4454)` is `17.45`. Not-a-number and infinity are said in words and by sign. */
export const showNumber = (value: number, digits?: number): string =>
  Number.isFinite(value) ? numberText(roundNumber(value, digits)) : unbounded(value);

export const unbounded = (value: number): string => (Number.isNaN(value) ? 'not a number' : value < 0 ? '-∞' : '∞');

/** An integer as superscript characters. */
export const superscript = (value: number): string =>
  [...String(value)].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(c)))).join('');

/** Outside 0.001 to 1,000,000,000 a number takes a power of ten. */
export const needsExponent = (magnitude: number): boolean =>
  magnitude !== 0 && (magnitude < 1e-3 || magnitude >= 1e9) && Number.isFinite(magnitude);

/** The power of ten of the first digit. */
export const exponentOf = (magnitude: number): number => Number(magnitude.toExponential().split('e')[1]);

/** Decimals that show `digits` significant digits of a number once it is rounded. */
function decimalsFor(magnitude: number, digits: number): number {
  const exponent = Number(magnitude.toExponential(digits - 1).split('e')[1]);
  return Math.max(0, digits - 1 - exponent);
}

function split(text: string, negative: boolean): RoundedNumber {
  const [whole, fraction = ''] = text.split('.');
  return { negative, whole, fraction: fraction.replace(/0+$/, '') };
}

const sign = ({ negative }: RoundedNumber): string => (negative ? '-' : '');

/** Thousands are parted from 10,000 up, so that years, lux and rpm read as usual. */
const group = (whole: string, separator: string): string =>
  whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, separator);
