import assert from 'node:assert/strict';
import { tradeFunctions } from '../../src/functions';
import { near, run, valueOf } from './sheet';

/**
 * Calls with one reading each, by function: where the number goes, and its nominal value in its unit. The doubt of the
 * result must be what a small change of the reading makes of it: linear propagation, JCGM 100, 5.1.
 */
const calls: Readonly<Record<string, string | undefined>> = {
  circuit: 'x = circuit(load: <16 A>, voltage: 120 V, length: 80 ft, conductor: 12 AWG Cu THHN, ocpd: 20 A)\nx.drop',
  resistance: 'resistance(12 AWG Cu solid, <80 ft>)',
  resistance_per_length: 'resistance_per_length(12 AWG Cu solid, temperature: <40 °C>)',
  resistance_at: 'resistance_at(<2 Ω>, from: 75 °C, to: 20 °C)',
  conductor_length: 'conductor_length(<0.8 Ω>, 12 AWG Cu solid, leads: 0.1 Ω)',
  effective_impedance: 'effective_impedance(1/0 AWG Cu, power_factor: <0.85>)',
  ampacity: undefined,
  voltage_drop: 'voltage_drop(12 AWG Cu solid, <16 A>, 80 ft)',
  longest_run: 'longest_run(12 AWG Cu solid, <16 A>, 3.6 V)',
  line_current: 'line_current(5 kW, <208 V>, phases: 3)',
  heater: 'x = heater(resistance: <14.4 Ω>, voltage: 240 V)\nx.power',
  real_power: 'real_power(5 kVA, <0.8>)',
  apparent_power: 'apparent_power(5 kW, <0.8>)',
  reactive_power: 'reactive_power(5 kW, <0.8>)',
  correction_kvar: 'correction_kvar(<5 kW>, from: 0.75, to: 0.9)',
  neutral_current: 'neutral_current(<10 A>, 8 A, 5 A)',
  unbalance: 'unbalance(<462 V>, 463 V, 455 V)',
  fault_current: 'fault_current(300 kVA, 208 V, <2 %>)',
  fault_current_at: 'fault_current_at(20 kA, 480 V, 1/0 AWG Cu, <100 ft>)',
  insulation_resistance_at: 'insulation_resistance_at(<200 MΩ>, from: 20 °C, to: 40 °C)',
  polarization_index: 'polarization_index(<500 MΩ>, 200 MΩ)',
  transformer_current: 'transformer_current(30 kVA, <480 V>)',
  dryer_demand: 'dryer_demand(2, <5.5 kW>)',
  lighting_demand: 'lighting_demand(<9000 VA>)',
  dwelling_load: 'x = dwelling_load(area: <1500 ft²>)\nx.total',
  cut_plan: 'x = cut_plan([<253.9 ft>], [200 ft])\nx.leftover',
  takeoff: 'x = takeoff([12 AWG Cu THHN], [<500 ft>], counts: [3])\nx.length',
  motor_circuit:
    'x = motor_circuit(power: 10 hp, voltage: 460 V, nameplate_current: <13 A>, service_factor: 1.15)\nx.overload',
};

/** Functions whose result steps from one listed value to the next, and so has no slope: the doubt is told in words. */
const stepping: Readonly<Record<string, string>> = {
  conductor_for: 'conductor_for(<20 A>)',
  conductor_for_drop: 'conductor_for_drop(<17 A>, 85 ft, 3.6 V)',
  ocpd_for: 'ocpd_for(<20 A>)',
  egc_for: 'egc_for(<60 A>)',
};

const withReading = (text: string, spread: number) =>
  text.replace(
    /<([-\d.]+)( [^>]*)?>/,
    (_, number: string, unit = '') => `${number}${unit} ± ${Number(number) * spread}${unit.replace('°C', 'Δ°C')}`,
  );
const at = (text: string, factor: number) =>
  text.replace(/<([-\d.]+)( [^>]*)?>/, (_, number: string, unit = '') => `${Number(number) * factor}${unit}`);

function base(text: string): number {
  const value = valueOf(text);
  assert.ok(value.kind === 'quantity', text);
  return value.base;
}

describe('the doubt of a reading goes through', () => {
  for (const [name, text] of Object.entries(calls)) {
    if (text === undefined) {
      continue;
    }
    it(name, () => {
      const value = valueOf(withReading(text, 1e-4));
      assert.ok(value.kind === 'quantity' && value.uncertainty, text);
      const slope = (base(at(text, 1 + 1e-4)) - base(at(text, 1 - 1e-4))) / 2;
      near(value.uncertainty.limits ?? 0, Math.abs(slope), 1e-3, text);
    });
  }

  for (const [name, text] of Object.entries(stepping)) {
    it(`${name} says when another result is possible`, () => {
      const { diagnostics } = run(withReading(text, 0.05));
      assert.ok(
        diagnostics.some(({ code }) => code === 'result-depends-on-doubt'),
        diagnostics.map(({ message }) => message).join('; '),
      );
    });
  }

  it('makes no slope of a step that the reading lies right at', () => {
    const { value, diagnostics } = run('ocpd_for(20 A ± 1 A)');
    assert.ok(value?.kind === 'quantity' && value.base === 20);
    assert.equal(value.uncertainty, undefined);
    assert.deepEqual(
      diagnostics.map(({ code }) => code),
      ['result-depends-on-doubt'],
    );
  });

  it('is tested for functions that there are', () => {
    const names = new Set(tradeFunctions.map(({ name }) => name));
    assert.deepEqual(
      [...Object.keys(calls), ...Object.keys(stepping)].filter((name) => !names.has(name)),
      [],
    );
  });
});
