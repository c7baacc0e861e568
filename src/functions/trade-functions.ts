import type { FunctionDefinition } from '../language';
import { ampacity } from './ampacity/ampacity';
import { conductor_for } from './ampacity/conductor_for';
import { current_carrying } from './ampacity/current_carrying';
import { circuit } from './circuit/circuit';
import { heater } from './heating/heater';
import { ac_resistance } from './impedance/ac_resistance';
import { effective_impedance } from './impedance/effective_impedance';
import { reactance } from './impedance/reactance';
import { insulation_resistance_at } from './insulation/insulation_resistance_at';
import { polarization_index } from './insulation/polarization_index';
import { dryer_demand } from './loads/dryer_demand';
import { dwelling_load } from './loads/dwelling_load';
import { lighting_demand } from './loads/lighting_demand';
import { range_demand } from './loads/range_demand';
import { motor_circuit } from './motors/motor_circuit';
import { motor_current } from './motors/motor_current';
import { motor_feeder } from './motors/motor_feeder';
import { apparent_power } from './power/apparent_power';
import { correction_kvar } from './power/correction_kvar';
import { line_current } from './power/line_current';
import { neutral_current } from './power/neutral_current';
import { reactive_power } from './power/reactive_power';
import { real_power } from './power/real_power';
import { unbalance } from './power/unbalance';
import { egc_for } from './protection/egc_for';
import { fault_current } from './protection/fault_current';
import { fault_current_at } from './protection/fault_current_at';
import { gec_for } from './protection/gec_for';
import { largest_ocpd } from './protection/largest_ocpd';
import { ocpd_for } from './protection/ocpd_for';
import { ocpd_within } from './protection/ocpd_within';
import { supply_bonding_for } from './protection/supply_bonding_for';
import { raceway_fill } from './raceways/raceway_fill';
import { raceway_for } from './raceways/raceway_for';
import { conductor_length } from './resistance/conductor_length';
import { resistance } from './resistance/resistance';
import { resistance_at } from './resistance/resistance_at';
import { resistance_per_length } from './resistance/resistance_per_length';
import { cut_plan } from './takeoff/cut_plan';
import { takeoff } from './takeoff/takeoff';
import { transformer_current } from './transformers/transformer_current';
import { transformer_for } from './transformers/transformer_for';
import { transformer_ocpd } from './transformers/transformer_ocpd';
import { conductor_for_drop } from './voltage-drop/conductor_for_drop';
import { longest_run } from './voltage-drop/longest_run';
import { voltage_drop } from './voltage-drop/voltage_drop';

/** Every trade function, in the order of the reference page: by subject, the everyday ones first. */
export const tradeFunctions: readonly FunctionDefinition[] = [
  circuit,
  resistance,
  resistance_per_length,
  resistance_at,
  conductor_length,
  ac_resistance,
  reactance,
  effective_impedance,
  ampacity,
  current_carrying,
  conductor_for,
  ocpd_for,
  largest_ocpd,
  ocpd_within,
  egc_for,
  raceway_for,
  raceway_fill,
  voltage_drop,
  longest_run,
  conductor_for_drop,
  line_current,
  heater,
  real_power,
  apparent_power,
  reactive_power,
  correction_kvar,
  neutral_current,
  unbalance,
  fault_current,
  motor_current,
  motor_circuit,
  motor_feeder,
  insulation_resistance_at,
  polarization_index,
  gec_for,
  supply_bonding_for,
  transformer_current,
  transformer_for,
  transformer_ocpd,
  fault_current_at,
  range_demand,
  dryer_demand,
  lighting_demand,
  dwelling_load,
  cut_plan,
  takeoff,
];
