import { ambientCorrection } from './ambient-correction';
import { ampacity } from './ampacity';
import { bundling } from './bundling';
import { conductorProperties } from './conductor-properties';
import { equipmentGrounding } from './equipment-grounding';
import { insulation } from './insulation';
import { overcurrentRatings } from './overcurrent-ratings';
import { smallConductors } from './small-conductors';
import type { Subject } from './subject';
import { temperatureCoefficients } from './temperature-coefficients';
import { wireTable } from './wire-table';

/** Every table there is, in the order in which they are listed to people. */
export const subjects: readonly Subject<never>[] = [
  conductorProperties,
  wireTable,
  ampacity,
  ambientCorrection,
  bundling,
  insulation,
  smallConductors,
  overcurrentRatings,
  equipmentGrounding,
  temperatureCoefficients,
] as readonly unknown[] as readonly Subject<never>[];
