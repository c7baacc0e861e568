import { inUnit, near } from '../functions/sheet';

/** Ohm's and Joule's laws with a single reading of each quantity; the pairs below are exact arithmetic. */
describe('Ohm’s and Joule’s laws', () => {
  const sheet = ['supply = 240 V', 'element = 5.77 Ω', ''].join('\n');
  // Source of both: common practice, no source. A 10 kW heat kit at 240 V is known as 41.6 A and 5.77 Ω.
  it('240 V over 5.77 Ω draws 41.6 A', () => near(inUnit(`${sheet}supply / element`, 'A'), 41.6, 1e-3));
  it('and gives 10 kW', () => near(inUnit(`${sheet}supply^2 / element`, 'kW'), 10, 2e-3));
  it('I²R and U·I give the same', () => {
    const power = inUnit(`${sheet}supply^2 / element`, 'W');
    near(inUnit(`${sheet}(supply / element)^2 * element`, 'W'), power, 1e-12);
    near(inUnit(`${sheet}supply * supply / element`, 'W'), power, 1e-12);
    near(inUnit(`${sheet}x = heater(resistance: element, voltage: supply)\nx.power`, 'W'), power, 1e-12);
  });

  // Source: SI Brochure, 9th edition: the coherent units V = W/A, Ω = V/A.
  it('the units are coherent: 1 V over 1 Ω is 1 A, 1 V times 1 A is 1 W', () => {
    near(inUnit('1 V / 1 Ω', 'A'), 1, 1e-15);
    near(inUnit('1 V * 1 A', 'W'), 1, 1e-15);
  });

  // Source: circuit theory: two resistances in series.
  it('an open neutral parts 240 V over 12 Ω and 48 Ω into 48 V and 192 V', () => {
    const open = 'a = 12 Ω\nb = 48 Ω\nI = 240 V / (a + b)\n';
    near(inUnit(`${open}I * a`, 'V'), 48, 1e-12);
    near(inUnit(`${open}I * b`, 'V'), 192, 1e-12);
  });

  // Source: thread “Do you have to remove fuses to check them?”, its conclusion corrected: Joule's law.
  it('a 30 A fuse of 5 Ω would burn 4.5 kW, so it is not good', () => near(inUnit('(30 A)^2 * 5 Ω', 'kW'), 4.5, 1e-12));
});
