import type { QuantityValue, Value } from '../language';
import { fromBase, type Unit, withPrefix } from '../units';
import { exponentOf, needsExponent, type RoundedNumber, roundNumber, roundToPlace, usualDigits } from './number';

/**
 * A quantity rounded and in the unit it is shown in: the one place where readings, bounds and plain results are told
 * apart, so that text and LaTeX say the same.
 */
export type ShownQuantity = { readonly unit: Unit } & (
  | { readonly form: 'plain'; readonly value: RoundedNumber }
  | { readonly form: 'plus-minus'; readonly value: RoundedNumber; readonly limits: RoundedNumber }
  | {
      readonly form: 'interval';
      readonly value: RoundedNumber;
      readonly low: RoundedNumber;
      readonly high: RoundedNumber;
    }
  | { readonly form: 'at least' | 'at most'; readonly value: RoundedNumber }
  | { readonly form: 'unbounded'; readonly value: number }
);

/** Its own unit, or, where that only follows from the arithmetic, the one with the prefix that reads best. */
export const shownUnit = (q: QuantityValue): Unit => (q.unitIsDerived ? withPrefix(q.base, q.unit) : q.unit);

/** `digits` are the significant digits of a value without uncertainty. */
export function shownQuantity(q: QuantityValue, digits: number = usualDigits): ShownQuantity {
  const unit = shownUnit(q);
  const u = q.uncertainty;
  if (u && u.low !== u.high) {
    const below = Number.isFinite(u.low);
    const above = Number.isFinite(u.high);
    if (below !== above) {
      const bound = roundNumber(fromBase(below ? u.low : u.high, unit), digits);
      return { unit, form: below ? 'at least' : 'at most', value: bound };
    }
    if (below && Number.isFinite(q.base)) {
      return uncertain(fromBase(q.base, unit), fromBase(u.low, unit), fromBase(u.high, unit), unit);
    }
  }
  const value = fromBase(q.base, unit);
  return Number.isFinite(value)
    ? { unit, form: 'plain', value: roundNumber(value, digits) }
    : { unit, form: 'unbounded', value };
}

/** The uncertainty to two significant digits and the value to the same place (GUM 7.2.6). */
function uncertain(value: number, low: number, high: number, unit: Unit): ShownQuantity {
  const limits = (high - low) / 2;
  const { decimals, exponent } = uncertainPlace(value, limits);
  const lopsided = Math.abs(high + low - 2 * value) > 0.1 * limits;
  const round = (x: number) => roundToPlace(x, decimals, exponent);
  return lopsided
    ? { unit, form: 'interval', value: round(value), low: round(low), high: round(high) }
    : { unit, form: 'plus-minus', value: round(value), limits: round(limits) };
}

/** The place that a value with such limits is rounded to, and the power of ten that is taken out before. */
export function uncertainPlace(
  value: number,
  limits: number,
): { readonly decimals: number; readonly exponent: number } {
  const size = Math.max(Math.abs(value), limits);
  const exponent = needsExponent(size) ? exponentOf(size) : 0;
  // The place of the second digit once it is rounded: 0.0996 becomes 0.10.
  return { decimals: 1 - Number(limits.toExponential(1).split('e')[1]) + exponent, exponent };
}

/** A value as it goes into a formula: the estimate alone, since the doubt is stated beside the result. */
export function estimate(value: Value): Value {
  if (value.kind !== 'quantity' || !value.uncertainty) {
    return value;
  }
  const { uncertainty: _, ...rest } = value;
  return Number.isFinite(value.uncertainty.low) && Number.isFinite(value.uncertainty.high) ? rest : value;
}
