import { inUnit, near } from '../functions/sheet';

/** One field of a heater. */
const heater = (fields: string, field: string, unit: string) => inUnit(`x = heater(${fields})\nx.${field}`, unit);

describe('resistive heaters', () => {
  // Source: water-heater forum, thread “Circuit trips”.
  it('a 12.8 Ω element rated 240 V on 208 V: 16.25 A, 3380 W of 4500 W', () => {
    const fields = 'resistance: 12.8 Ω, voltage: 208 V, rated_voltage: 240 V';
    near(heater(fields, 'current', 'A'), 16.25, 5e-3);
    near(heater(fields, 'power', 'W'), 3380, 5e-3);
    near(heater(fields, 'rated_power', 'W'), 4500, 5e-3);
    near(heater(fields, 'power', 'W') / heater(fields, 'rated_power', 'W'), 0.751, 5e-3);
  });

  // Source: thread “Electric vs LPG”; the same in a water-heater troubleshooting forum.
  it('a 4500 W, 240 V element on 120 V: 1125 W, 9.375 A', () => {
    const fields = 'rated_power: 4500 W, rated_voltage: 240 V, voltage: 120 V';
    near(heater(fields, 'power', 'W'), 1125, 5e-3);
    near(heater(fields, 'current', 'A'), 9.375, 5e-3);
  });

  // Source: heater manufacturer's engineering note on applied against rated voltage.
  it('1000 W at 240 V on 208 V: 751.1 W', () =>
    near(heater('rated_power: 1 kW, rated_voltage: 240 V, voltage: 208 V', 'power', 'W'), 751.1, 2e-4));

  // Source: method of an element-testing page, numbers our own: 12.9 Ω less 0.3 Ω of leads.
  it('leads taken off: 12.6 Ω at 240 V is 19.05 A and 4.57 kW, 125 % of it 23.8 A', () => {
    const fields = 'resistance: 12.9 Ω - 0.3 Ω, voltage: 240 V';
    near(heater(fields, 'current', 'A'), 19.05, 5e-3);
    near(heater(fields, 'power', 'kW'), 4.57, 5e-3);
    near(1.25 * heater(fields, 'current', 'A'), 23.8, 5e-3);
  });

  // Source: “nichrome wire resistance vs temperature”, numbers our own.
  it('a cold 14.4 Ω element with a hot factor of 1.08: 16.67 A cold, 15.43 A and 3.70 kW hot', () => {
    near(heater('resistance: 14.4 Ω, voltage: 240 V', 'current', 'A'), 16.67, 5e-3);
    near(heater('resistance: 14.4 Ω * 1.08, voltage: 240 V', 'current', 'A'), 15.43, 5e-3);
    near(heater('resistance: 14.4 Ω * 1.08, voltage: 240 V', 'power', 'kW'), 3.7, 5e-3);
  });

  // Source: thread “Non-ohmic device - light bulb”: cold ohms do not give a lamp's watts.
  it('a 60 W, 110 V lamp has about 202 Ω lit, 11 times its 18 Ω cold', () => {
    near(inUnit('(110 V)^2 / 60 W', 'Ω'), 202, 5e-3);
    near(inUnit('(110 V)^2 / 60 W / 18 Ω', ''), 11, 0.03);
    near(heater('resistance: 18 Ω, voltage: 110 V', 'power', 'W'), 672, 5e-3);
  });

  // Source: “Simplest way to build a light dimmer”.
  it('a 100 W, 120 V lamp has 144 Ω lit; 9.5 Ω cold lets 12.6 A in', () => {
    near(inUnit('(120 V)^2 / 100 W', 'Ω'), 144, 1e-12);
    near(heater('resistance: 9.5 Ω, voltage: 120 V', 'current', 'A'), 12.6, 5e-3);
  });

  // Source: three-phase heater resistance-check article, numbers our own.
  it('three-phase, 19.2 Ω between any two leads at 480 V: 24.0 kW, 28.9 A, not 25 A', () => {
    const fields = 'resistance: 19.2 Ω, voltage: 480 V, phases: 3';
    near(heater(fields, 'power', 'kW'), 24, 5e-3);
    near(heater(fields, 'current', 'A'), 28.9, 5e-3);
  });

  // Physics: a wye of r reads 2r between lines, a delta of r reads 2r/3; line power is 3 times that of one element.
  it('wye and delta with the same reading between lines draw the same', () => {
    const wye = inUnit('3 * (480 V / sqrt(3))^2 / (19.2 Ω / 2)', 'W');
    const delta = inUnit('3 * (480 V)^2 / (1.5 * 19.2 Ω)', 'W');
    near(wye, delta, 1e-12);
    near(heater('resistance: 19.2 Ω, voltage: 480 V, phases: 3', 'power', 'W'), wye, 1e-12);
  });

  // Source: low-resistance testing guide, cable reels; numbers our own. A cut sample needs no table.
  it('a reel from a cut sample: 0.326 Ω over 16.3 mΩ per 10 ft is 200 ft', () =>
    near(inUnit('0.326 Ω / (16.3 mΩ / 10 ft)', 'ft'), 200, 5e-3));
});
