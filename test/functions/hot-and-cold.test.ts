import assert from 'node:assert/strict';
import { errorOf, inUnit, near, stepsOf } from './sheet';

const field = (fields: string, name: string, unit: string) => inUnit(`x = heater(${fields})\nx.${name}`, unit);
const assumptionsOf = (text: string) =>
  stepsOf(text).flatMap((step) => (step.kind === 'assumption' ? [step.text] : []));

describe('a heater read cold', () => {
  // Source: heating-alloy data sheets; 14.4 Ω, hot factor 1.08, 240 V: 16.67 A cold, 15.43 A and 3.70 kW hot.
  it('draws less when it is hot, and the conductor goes by the cold current', () => {
    const fields = 'resistance: 14.4 Ω, voltage: 240 V, hot_factor: 1.08';
    near(field(fields, 'current', 'A'), 15.43, 5e-4);
    near(field(fields, 'power', 'kW'), 3.7, 2e-3);
    near(field(fields, 'cold_current', 'A'), 16.67, 5e-4);
  });

  it('says that its current is an upper bound where no factor is given, and only then', () => {
    const bound = /upper bound/;
    assert.ok(assumptionsOf('x = heater(resistance: 14.4 Ω, voltage: 240 V)').some((text) => bound.test(text)));
    for (const fields of ['resistance: 14.4 Ω, hot_factor: 1', 'rated_power: 4 kW, rated_voltage: 240 V']) {
      const told = assumptionsOf(`x = heater(${fields}, voltage: 240 V)`);
      assert.ok(!told.some((text) => bound.test(text)), fields);
    }
  });
});

describe('a filament lamp', () => {
  // Source: lecture demonstration on a lamp that does not follow Ohm’s law: 60 W, 110 V, 18 Ω cold, about 202 Ω lit.
  it('gives no running watts from cold ohms alone', () => {
    const { code, message } = errorOf('heater(resistance: 18 Ω, voltage: 110 V, kind: lamp)');
    assert.equal(code, 'cold-filament');
    assert.match(message, /hot_factor \(10 to 15 for tungsten\)/);
    near(field('resistance: 18 Ω, voltage: 110 V, kind: lamp, hot_factor: 202 / 18', 'power', 'W'), 60, 2e-3);
  });

  // Source: “Simplest way to build a light dimmer”: 100 W, 120 V, 9.5 Ω cold: 12.6 A as it is switched on.
  it('draws its cold current as it is switched on', () => {
    near(field('resistance: 9.5 Ω, voltage: 120 V, kind: lamp, hot_factor: 15', 'cold_current', 'A'), 12.6, 5e-3);
    near(
      field('rated_power: 100 W, rated_voltage: 120 V, voltage: 120 V, kind: lamp', 'current', 'A'),
      100 / 120,
      1e-12,
    );
  });
});

describe('the temperature of conductors in a fault', () => {
  const at = (more: string) => inUnit(`fault_current_at(20 kA, 480 V, 1/0 AWG Cu, 100 ft, raceway: steel${more})`, 'A');

  // Source: trade notes on which temperature goes with which question: cold for the largest fault, hot for the least.
  it('is cold for the largest current, and the sheet says so', () => {
    assert.ok(at('') > at(', temperature: 75 °C'));
    assert.equal(at(''), at(', temperature: 20 °C'));
    assert.ok(at(', temperature: 150 °C') < at(', temperature: 75 °C'));
    const told = assumptionsOf('x = fault_current_at(20 kA, 480 V, 1/0 AWG Cu, 100 ft)');
    assert.ok(told.some((text) => /temperature 20 °C taken: cold, for the largest fault current/.test(text)));
  });

  // R cos φ and X of Table 9 for 1/0 Cu in steel: 0.12 and 0.055 Ω/kft; 1 - 0.00323 × 55 = 0.822.
  it('changes the resistance alone', () => {
    const z = Math.hypot(0.12 * (1 + 0.00323 * (20 - 75)), 0.055) / 1000;
    near(at(''), 20_000 / (1 + (Math.sqrt(3) * 20_000 * z * 100) / 480), 1e-9);
  });
});
