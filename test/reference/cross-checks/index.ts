import { acImpedanceChecks } from './ac-impedance';
import { ampacityChecks } from './ampacity';
import { choiceChecks } from './choices';
import { circuitChecks } from './circuits';
import { conductorResistanceChecks } from './conductor-resistance';
import type { CrossCheck } from './cross-check';
import { cuttingChecks } from './cutting';
import { dwellingAndDemandChecks } from './dwellings-and-demand';
import { groundingChecks } from './grounding';
import { iecConductorChecks } from './iec-conductors';
import { machineAndMaterialChecks } from './machines-and-materials';
import { motorCurrentChecks } from './motor-currents';
import { racewayChecks } from './raceways';
import { temperatureCoefficientChecks } from './temperature-coefficients';
import { wireTableChecks } from './wire-table';

export type { Comparison, CrossCheck } from './cross-check';

/** Every independent check of a table or a function, in the order in which they are told. */
export const crossChecks: readonly CrossCheck[] = [
  ...conductorResistanceChecks,
  ...wireTableChecks,
  ...temperatureCoefficientChecks,
  ...acImpedanceChecks,
  ...iecConductorChecks,
  ...ampacityChecks,
  ...racewayChecks,
  ...groundingChecks,
  ...motorCurrentChecks,
  ...machineAndMaterialChecks,
  ...dwellingAndDemandChecks,
  ...choiceChecks,
  ...cuttingChecks,
  ...circuitChecks,
];
