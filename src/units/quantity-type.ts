import { type Dimension, dimensionOf } from './dimension';

/**
 * What a dimension alone cannot tell apart.
 * `real`, `apparent`, `reactive`: power in W, VA, var. `absolute`: a temperature on a scale, against a difference.
 * `plain`: everything else, and power whose kind nobody stated (volts times amperes), which goes with any of the three.
 */
export type Kind = 'plain' | 'real' | 'apparent' | 'reactive' | 'absolute';

/** Dimension and kind of a quantity; each pair is one object, so `===` compares. */
export interface QuantityType {
  readonly dimension: Dimension;
  readonly kind: Kind;
}

const known = new Map<string, QuantityType>();

export function quantityType(dimension: Dimension, kind: Kind = 'plain'): QuantityType {
  const key = `${dimension.key}|${kind}`;
  let type = known.get(key);
  if (!type) {
    type = Object.freeze({ dimension, kind });
    known.set(key, type);
  }
  return type;
}

export const powerDimension = dimensionOf({ length: 2, mass: 1, time: -3 });
export const temperatureDimension = dimensionOf({ temperature: 1 });
export const temperatureDifference = quantityType(temperatureDimension);
export const absoluteTemperature = quantityType(temperatureDimension, 'absolute');
