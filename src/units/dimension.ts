/**
 * Physical dimensions as vectors of exponents. Each distinct vector is one object, so `===` compares dimensions.
 * Every currency is a base of its own: dollars do not turn into euros by arithmetic.
 */
export const bases = [
  'length',
  'mass',
  'time',
  'current',
  'temperature',
  'luminousIntensity',
  'USD',
  'CAD',
  'MXN',
  'EUR',
  'GBP',
] as const;
export type Base = (typeof bases)[number];

export interface Dimension {
  /** Exponents in the order of `bases`; halves and thirds occur under roots. */
  readonly exponents: readonly number[];
  readonly key: string;
}

const known = new Map<string, Dimension>();

function intern(exponents: readonly number[]): Dimension {
  const rounded = exponents.map((e) => Math.round(e * 60) / 60 + 0); // Sixtieths keep every root in use exact; + 0 drops -0.
  const key = rounded.join(',');
  let dimension = known.get(key);
  if (!dimension) {
    dimension = Object.freeze({ exponents: Object.freeze(rounded), key });
    known.set(key, dimension);
  }
  return dimension;
}

/** `dimensionOf({ length: 2, time: -1 })` */
export const dimensionOf = (powers: Partial<Record<Base, number>>): Dimension =>
  intern(bases.map((base) => powers[base] ?? 0));

export const dimensionless = dimensionOf({});

export const multiplyDimensions = (a: Dimension, b: Dimension): Dimension =>
  b === dimensionless ? a : a === dimensionless ? b : intern(a.exponents.map((e, i) => e + b.exponents[i]));

export const divideDimensions = (a: Dimension, b: Dimension): Dimension =>
  b === dimensionless ? a : intern(a.exponents.map((e, i) => e - b.exponents[i]));

export const raiseDimension = (a: Dimension, power: number): Dimension => intern(a.exponents.map((e) => e * power));
