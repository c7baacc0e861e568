export {
  type Base,
  bases,
  type Dimension,
  dimensionless,
  dimensionOf,
  divideDimensions,
  multiplyDimensions,
  raiseDimension,
} from './dimension';
export { type UnitSystem, unitFor } from './display-unit';
export { loadMathjs } from './mathjs-bridge';
export { parseUnit, type UnitProblem } from './parse-unit';
export { withPrefix } from './prefixes';
export {
  absoluteTemperature,
  type Kind,
  powerDimension,
  type QuantityType,
  quantityType,
  temperatureDifference,
  temperatureDimension,
} from './quantity-type';
export { isUnit, readUnit } from './read-unit';
export { fromBase, toBase, type Unit } from './unit';
export { type NamedUnit, namedUnits } from './unit-table';
export { type UnitWord, unitWords } from './unit-words';
