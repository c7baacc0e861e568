import { acImpedance } from './ac-impedance';
import { ambientCorrection } from './ambient-correction';
import { ampacity } from './ampacity';
import { bundling } from './bundling';
import { conductorProperties } from './conductor-properties';
import { cordAmpacity } from './cord-ampacity';
import { dryerDemand } from './dryer-demand';
import { dwellingServices } from './dwelling-services';
import { equipmentGrounding } from './equipment-grounding';
import { groundingElectrode } from './grounding-electrode';
import { iecConductors } from './iec-conductors';
import { insulatedAreas } from './insulated-areas';
import { insulation } from './insulation';
import { lightingDemand } from './lighting-demand';
import { lightingLoads } from './lighting-loads';
import { loadRules } from './load-rules';
import { lockedRotor } from './locked-rotor';
import { motorCurrents } from './motor-currents';
import { motorProtection } from './motor-protection';
import { multifamilyDemand } from './multifamily-demand';
import { overcurrentRatings } from './overcurrent-ratings';
import { racewayAreas } from './raceway-areas';
import { racewayFill } from './raceway-fill';
import { rangeDemand } from './range-demand';
import { smallConductors } from './small-conductors';
import type { Subject } from './subject';
import { supplyBonding } from './supply-bonding';
import { tapRules } from './tap-rules';
import { temperatureCoefficients } from './temperature-coefficients';
import { transformerImpedance } from './transformer-impedance';
import { transformerProtection } from './transformer-protection';
import { transformerSizes } from './transformer-sizes';
import { welderDuty } from './welder-duty';
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
  cordAmpacity,
  overcurrentRatings,
  tapRules,
  equipmentGrounding,
  temperatureCoefficients,
  acImpedance,
  groundingElectrode,
  supplyBonding,
  dwellingServices,
  racewayFill,
  racewayAreas,
  insulatedAreas,
  motorCurrents,
  motorProtection,
  lockedRotor,
  welderDuty,
  transformerProtection,
  transformerSizes,
  transformerImpedance,
  lightingLoads,
  lightingDemand,
  rangeDemand,
  dryerDemand,
  multifamilyDemand,
  loadRules,
  iecConductors,
] as readonly unknown[] as readonly Subject<never>[];
