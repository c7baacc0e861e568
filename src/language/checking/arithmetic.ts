import {
  absoluteTemperature,
  dimensionless,
  divideDimensions,
  type Kind,
  multiplyDimensions,
  powerDimension,
  type QuantityType,
  quantityType,
  raiseDimension,
  temperatureDifference,
  unitFor,
} from '../../units';
import { ownUnit, plainNumberType, type QuantityOf, quantityOf, writtenIn } from './types';

/** Why two quantities do not go together; the checker puts it in words. */
export type Misfit =
  | 'dimension'
  | 'power-kinds'
  | 'two-temperatures'
  | 'temperature-and-difference'
  | 'temperature-factor';

type Table = Map<QuantityOf, Map<QuantityOf, QuantityOf | Misfit>>;

/**
 * The types of sums, products and powers, kinds and display units included. Every pair is worked out once, because a
 * sheet has few distinct types and many formulas.
 */
export class Arithmetic {
  private readonly products: Table = new Map();
  private readonly quotients: Table = new Map();
  private readonly sums: Table = new Map();
  private readonly differences: Table = new Map();
  private readonly powers = new Map<QuantityOf, Map<number, QuantityOf>>();

  constructor(private readonly system: 'US' | 'SI') {}

  product = (a: QuantityOf, b: QuantityOf) => remember(this.products, a, b, this.findProduct);
  quotient = (a: QuantityOf, b: QuantityOf) => remember(this.quotients, a, b, this.findQuotient);
  sum = (a: QuantityOf, b: QuantityOf) => remember(this.sums, a, b, findSum);
  difference = (a: QuantityOf, b: QuantityOf) => remember(this.differences, a, b, findDifference);

  power(a: QuantityOf, exponent: number): QuantityOf {
    if (exponent === 1) {
      return a;
    }
    let row = this.powers.get(a);
    if (!row) {
      row = new Map();
      this.powers.set(a, row);
    }
    let result = row.get(exponent);
    if (!result) {
      result = this.canonical(quantityType(raiseDimension(a.quantity.dimension, exponent)));
      row.set(exponent, result);
    }
    return result;
  }

  /** A quantity of this type in the unit that fits it best, as nobody wrote one. */
  canonical(type: QuantityType): QuantityOf {
    return type.dimension === dimensionless ? plainNumberType() : quantityOf(type, unitFor(type, this.system), true);
  }

  private findProduct = (a: QuantityOf, b: QuantityOf): QuantityOf | Misfit => {
    if (isAbsolute(a) || isAbsolute(b)) {
      return 'temperature-factor';
    }
    if (isNumber(b)) {
      return isNumber(a) && a.unit.symbol !== '' && b.unit.symbol !== '' ? plainNumberType() : isPlain(a) ? b : a;
    }
    return isNumber(a)
      ? b
      : this.canonical(quantityType(multiplyDimensions(a.quantity.dimension, b.quantity.dimension)));
  };

  private findQuotient = (a: QuantityOf, b: QuantityOf): QuantityOf | Misfit => {
    if (isAbsolute(a) || isAbsolute(b)) {
      return 'temperature-factor';
    }
    if (isNumber(b)) {
      return isNumber(a) && b.unit.symbol !== '' ? plainNumberType() : a;
    }
    return this.canonical(quantityType(divideDimensions(a.quantity.dimension, b.quantity.dimension)));
  };
}

const isAbsolute = (a: QuantityOf): boolean => a.quantity.kind === 'absolute';
const isNumber = (a: QuantityOf): boolean => a.quantity.dimension === dimensionless;
const isPlain = (a: QuantityOf): boolean => isNumber(a) && a.unit.symbol === '';

function remember(
  table: Table,
  a: QuantityOf,
  b: QuantityOf,
  find: (a: QuantityOf, b: QuantityOf) => QuantityOf | Misfit,
): QuantityOf | Misfit {
  let row = table.get(a);
  if (!row) {
    row = new Map();
    table.set(a, row);
  }
  let result = row.get(b);
  if (result === undefined) {
    result = find(a, b);
    row.set(b, result);
  }
  return result;
}

/** The kind of two that go together: one that nobody stated takes the other's. */
function commonKind(a: Kind, b: Kind): Kind | undefined {
  return a === b || b === 'plain' ? a : a === 'plain' ? b : undefined;
}

/** Undefined when two quantities may be compared, or one be shown in the other's unit; else why not. */
export function misfit(a: QuantityType, b: QuantityType): Misfit | undefined {
  if (a === b) {
    return undefined;
  }
  if (a.dimension !== b.dimension) {
    return 'dimension';
  }
  if (a.kind === 'absolute' || b.kind === 'absolute') {
    return 'temperature-and-difference';
  }
  return commonKind(a.kind, b.kind) === undefined ? 'power-kinds' : undefined;
}

function findSum(a: QuantityOf, b: QuantityOf): QuantityOf | Misfit {
  if (isAbsolute(a) && isAbsolute(b)) {
    return 'two-temperatures';
  }
  if (a.quantity.dimension === b.quantity.dimension && (isAbsolute(a) || isAbsolute(b))) {
    return isAbsolute(a) ? a : b;
  }
  return likeTerms(a, b);
}

function findDifference(a: QuantityOf, b: QuantityOf): QuantityOf | Misfit {
  if (isAbsolute(a) && isAbsolute(b)) {
    return differenceOn(a);
  }
  if (isAbsolute(a) && b.quantity === temperatureDifference) {
    return a;
  }
  return likeTerms(a, b);
}

function likeTerms(a: QuantityOf, b: QuantityOf): QuantityOf | Misfit {
  const problem = misfit(a.quantity, b.quantity);
  if (problem) {
    return problem;
  }
  const kind = commonKind(a.quantity.kind, b.quantity.kind)!;
  return kind === a.quantity.kind
    ? a
    : // Power of unstated kind takes the other's kind, and its unit too where its own was not written.
      a.unitIsDerived
      ? b
      : quantityOf(quantityType(a.quantity.dimension, kind), a.unit, a.unitIsDerived);
}

/** The unit of a difference between two temperatures on the scale of `a`. */
export function differenceOn(a: QuantityOf): QuantityOf {
  const unit = ownUnit(a.unit.symbol === '°F' ? 'Δ°F' : a.unit.symbol === '°C' ? 'Δ°C' : 'K');
  return quantityOf(temperatureDifference, unit);
}

/** The type of the same quantity shown in `unit`; call `misfit` first. */
export function convertedTo(type: QuantityOf, unit: QuantityOf['unit']): QuantityOf {
  if (type.quantity === absoluteTemperature) {
    return quantityOf(absoluteTemperature, unit);
  }
  // Volts times amperes shown in watts is real power from then on: the author said so.
  return type.quantity.dimension === powerDimension && type.quantity.kind === 'plain'
    ? writtenIn(unit)
    : quantityOf(type.quantity, unit);
}
