import type { QuantityType } from './quantity-type';

/**
 * A unit as one factor to the coherent SI unit of its dimension: `base = value * factor + offset`.
 * Only temperature scales (°C, °F) have an offset.
 */
export interface Unit {
  /** As shown to people: `Ω/kft`, `kW`, `°C`, `%`; empty for a plain number. */
  readonly symbol: string;
  readonly type: QuantityType;
  readonly factor: number;
  readonly offset: number;
}

export const toBase = (value: number, unit: Unit): number => value * unit.factor + unit.offset;
export const fromBase = (base: number, unit: Unit): number => (base - unit.offset) / unit.factor;
