import assert from 'node:assert/strict';
import { tradeFunctions } from '../../src/functions';

/**
 * The names that sheets are written with, in the notation of the reference page: positional parameters, then after
 * `;` the named ones; `=` and a default, `?` for one that may be left out.
 */
const signatures: readonly string[] = [
  'circuit(; load?, continuous?, voltage?, phases=1, power_factor=1, length?, conductor?, material?, insulation?, terminals?, ambient=30, bundled=3, sets=1, ocpd?, device?, kind?, mca?, mocp?, duty?, welder?, drop_limit?, raceway?, egc?)',
  'resistance(conductor, length; temperature=75)',
  'resistance_per_length(conductor; temperature=75)',
  'resistance_at(resistance; from, to, material=Cu)',
  'conductor_length(resistance, conductor; temperature=20, leads=0, loop=false)',
  'ac_resistance(conductor; raceway=PVC)',
  'reactance(conductor; raceway=PVC)',
  'effective_impedance(conductor; raceway=PVC, power_factor=0.85)',
  'ampacity(conductor; insulation?, terminals?, ambient=30, bundled=3)',
  'current_carrying(circuit; count=1, nonlinear=false)',
  'conductor_for(current; material=Cu, insulation=THHN, terminals?, ambient=30, bundled=3, continuous=false)',
  'ocpd_for(current; continuous=false)',
  'largest_ocpd(conductor; insulation?, terminals?, ambient=30, bundled=3)',
  'ocpd_within(limit; device=breaker)',
  'egc_for(ocpd; material=Cu, area_ratio=1)',
  'raceway_for(conductors; type=EMT, nipple=false)',
  'raceway_fill(conductors, type, size; nipple=false)',
  'voltage_drop(conductor, current, length; phases=1, temperature=75, sets=1, raceway?, power_factor=1)',
  'longest_run(conductor, current, drop; phases=1, temperature=75, sets=1, raceway?, power_factor=1)',
  'conductor_for_drop(current, length, drop; phases=1, material=Cu, temperature=75, sets=1, raceway?, power_factor=1)',
  'line_current(power, voltage; phases=1, power_factor=1, efficiency=1)',
  'heater(; resistance?, voltage?, rated_voltage?, phases=1, rated_power?, hot_factor?, kind?, isolated?)',
  'real_power(power, power_factor)',
  'apparent_power(power, power_factor)',
  'reactive_power(power, power_factor)',
  'correction_kvar(power; from, to)',
  'neutral_current(a, b, c)',
  'unbalance(a, b, c)',
  'fault_current(power, voltage, impedance; phases=3, interrupting_rating?)',
  'motor_current(power, voltage; phases=3)',
  'motor_circuit(; power, voltage, phases=3, device=breaker, rotor=squirrel_cage, nameplate_current?, service_factor=1)',
  'motor_feeder(currents; devices?)',
  'insulation_resistance_at(resistance; from, to)',
  'polarization_index(ten_minutes, one_minute)',
  'gec_for(conductor; material=Cu, sets=1)',
  'supply_bonding_for(conductor; material=Cu, sets=1)',
  'transformer_current(power, voltage; phases=3)',
  'transformer_ocpd(current; protection=primary_only)',
  'transformer_for(load; phases=3)',
  'fault_current_at(current, voltage, conductor, length; phases=3, sets=1, raceway=PVC, temperature=20, interrupting_rating?)',
  'cut_plan(reels, cuts)',
  'takeoff(conductors, lengths; counts?, make_up=0, waste=0, priced?, prices?, reel?)',
  'range_demand(count, rating)',
  'dryer_demand(count, rating)',
  'lighting_demand(load; occupancy=dwelling)',
  'dwelling_load(; area, method=standard, voltage=240, phases=1, units=1, small_appliance_circuits=2, laundry_circuits=1, range?, ranges?, dryer?, dryers?, water_heater?, dishwasher?, appliances?, neutral_appliances?, space_heating?, heating_controls=1, air_conditioning?, heat_pump?, supplemental_heat?, thermal_storage?, ev_charger?, largest_motor?)',
];

function signatureOf(definition: (typeof tradeFunctions)[number]): string {
  const parameters = Object.entries(definition.parameters);
  const written = (named: boolean) =>
    parameters
      .filter(([, parameter]) => Boolean(parameter.named) === named)
      .map(([name, p]) => (p.default === undefined ? `${name}${p.optional ? '?' : ''}` : `${name}=${p.default}`))
      .join(', ');
  const named = written(true);
  return `${definition.name}(${written(false)}${named ? `; ${named}` : ''})`;
}

const recordFields: Readonly<Record<string, string>> = {
  circuit: 'design_current A, load_current A, ampacity A, conductor, ocpd A, egc, drop V, drop_percent %, raceway',
  motor_circuit: 'table_current A, conductor_ampacity A, ocpd A, overload A',
  heater: 'current A, power W, rated_power W, cold_current A',
};

describe('the names that sheets are written with', () => {
  it('stay as they are', () => {
    const written = new Set(signatures);
    assert.deepEqual(
      tradeFunctions.map(signatureOf).filter((signature) => !written.has(signature)),
      [],
    );
    assert.equal(tradeFunctions.length, signatures.length);
  });

  for (const [name, fields] of Object.entries(recordFields)) {
    it(`fields of ${name}`, () => {
      const definition = tradeFunctions.find((candidate) => candidate.name === name);
      assert.ok(definition && 'record' in definition.result);
      const actual = Object.entries(definition.result.record)
        .map(([field, type]) => ('unit' in type ? `${field} ${type.unit}` : field))
        .join(', ');
      assert.equal(actual, fields);
    });
  }
});
