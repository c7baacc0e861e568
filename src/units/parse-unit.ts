import { codesOf } from '../text';
import { type Dimension, dimensionless, multiplyDimensions, raiseDimension } from './dimension';
import { powerDimension, quantityType } from './quantity-type';
import { type Factor, readUnit, superscriptDigits } from './read-unit';
import { suggestUnit } from './suggest-unit';
import type { Unit } from './unit';

/** What is wrong with a unit, as a sentence, and what was probably meant. */
export interface UnitProblem {
  readonly problem: string;
  readonly suggestion?: string;
}

const byText = new Map<string, Unit>();
const bySymbol = new Map<string, Unit>();

/**
 * The unit that `text` names: `V`, `kohm`, `Ω·cmil/ft`, `1/°C`; the empty text is the unit of a plain number. Texts
 * that mean the same way of writing (`ohm/kft`, `Ω/kft`) give the same object.
 */
export function parseUnit(text: string): Unit | UnitProblem {
  const cached = byText.get(text);
  if (cached) {
    return cached;
  }
  const factors: Factor[] = [];
  if (readUnit(codesOf(text), 0, factors) !== text.length) {
    const suggestion = suggestUnit(text);
    return { problem: `\`${text}\` is not a unit.`, ...(suggestion && { suggestion }) };
  }
  const symbol = symbolOf(factors);
  let unit = bySymbol.get(symbol);
  if (!unit) {
    unit = compose(symbol, factors);
    if (!Number.isFinite(unit.factor) || unit.factor < Number.MIN_VALUE * 2 ** 52) {
      return { problem: `\`${text}\` is too large or too small a unit to compute with.` };
    }
    bySymbol.set(symbol, unit);
  }
  byText.set(text, unit);
  return unit;
}

function compose(symbol: string, factors: readonly Factor[]): Unit {
  if (factors.length === 1 && factors[0].power === 1 && !factors[0].below) {
    const { unit, powerOfTen } = factors[0].word;
    const factor = scale(unit.value, 1, powerOfTen);
    return Object.freeze({ symbol, type: quantityType(unit.dimension, unit.kind), factor, offset: unit.offset ?? 0 });
  }
  let dimension: Dimension = dimensionless;
  let above = 1;
  let below = 1;
  let powerOfTen = 0;
  for (const { word, power, below: isBelow } of factors) {
    const exponent = isBelow ? -power : power;
    dimension = multiplyDimensions(dimension, raiseDimension(word.unit.dimension, exponent));
    powerOfTen += word.powerOfTen * exponent;
    if (exponent > 0) {
      above *= raised(word.unit.value, exponent);
    } else {
      below *= raised(word.unit.value, -exponent);
    }
  }
  const kind = dimension === powerDimension && isVoltAmpere(factors) ? 'apparent' : 'plain';
  return Object.freeze({
    symbol,
    type: quantityType(dimension, kind),
    factor: scale(above, below, powerOfTen),
    offset: 0,
  });
}

/** `V·A` is how the standards write the unit of apparent power; any other product of power's dimension is of no kind. */
const isVoltAmpere = (factors: readonly Factor[]): boolean =>
  factors.length === 2 && factors.every((f) => f.power === 1 && !f.below && 'VA'.includes(f.word.unit.symbol));

/** By multiplication, because it is exact where `Math.pow` may be one digit off. */
function raised(value: number, power: number): number {
  if (!Number.isInteger(power)) {
    return value ** power;
  }
  let result = 1;
  for (let i = 0; i < power; i++) {
    result *= value;
  }
  return result;
}

/** Whole powers of ten up to 22 are exact as floats, so prefixes cost one rounding at most. */
const scale = (above: number, below: number, powerOfTen: number): number =>
  powerOfTen < 0 ? above / (below * 10 ** -powerOfTen) : (above * 10 ** powerOfTen) / below;

function symbolOf(factors: readonly Factor[]): string {
  const above = factors.filter((f) => !f.below).map(factorSymbol);
  const below = factors.filter((f) => f.below).map(factorSymbol);
  const top = above.join('·');
  return below.length === 0 ? top : `${top || '1'}/${below.length === 1 ? below[0] : `(${below.join('·')})`}`;
}

const factorSymbol = ({ word, power }: Factor): string => word.symbol + exponentSymbol(power);

/** `²`, `⁻¹`, `^(1/2)`; empty for 1. */
export function exponentSymbol(power: number): string {
  if (power === 1) {
    return '';
  }
  if (Number.isInteger(power)) {
    return (power < 0 ? '⁻' : '') + superscriptDigits.charAt(Math.abs(power));
  }
  const denominator = [2, 3, 4, 5, 6].find((d) => Math.abs(power * d - Math.round(power * d)) < 1e-9) ?? 60;
  return `^(${Math.round(power * denominator)}/${denominator})`;
}
