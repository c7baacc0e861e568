export { type Conductor, conductorText, conductorType } from './conductor';
export { alwaysSizeUnits, designationWords, insulationWords, sizeUnits } from './conductor-words';
export { designationReader } from './designation';
export {
  type AmpacityFact,
  type CircuitFact,
  type CircuitKind,
  circuitKinds,
  type DeviceBounds,
  type FaultFact,
  type HeaterFact,
  type LengthFact,
  type RacewayFact,
  type ResistancePerLengthFact,
  type TradeFact,
} from './facts';
export { figure } from './number-text';
export { type PhaseLoads, phaseLoads } from './rules/phase-loads';
export { resistanceReference } from './rules/resistance-reference';
export type { TradeSettings } from './settings';
export { tradeFunctions } from './trade-functions';
