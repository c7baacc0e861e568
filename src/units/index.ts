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
export {
  absoluteTemperature,
  type Kind,
  plainNumber,
  powerDimension,
  type QuantityType,
  quantityType,
  temperatureDifference,
  temperatureDimension,
} from './quantity-type';
export { fromBase, toBase, type Unit } from './unit';
