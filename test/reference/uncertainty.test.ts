import assert from 'node:assert/strict';
import type { Uncertainty } from '../../src/language';
import { fromBase, parseUnit } from '../../src/units';
import { near, valueOf } from '../functions/sheet';
import { expressions, sources } from './uncertainties.json';

/** What is known of the last value of a cell, in a unit. */
function known(
  text: string,
  unitText: string,
): Required<Pick<Uncertainty, 'standard' | 'coverageFactor'>> & {
  readonly value: number;
  readonly half: number;
  readonly limits: number;
} {
  const value = valueOf(text);
  const unit = parseUnit(unitText);
  assert.ok(value.kind === 'quantity' && value.uncertainty && !('problem' in unit), text);
  const { standard, low, high, coverageFactor, limits = Number.NaN } = value.uncertainty;
  return {
    value: fromBase(value.base, unit),
    standard: standard / unit.factor,
    half: (high - low) / 2 / unit.factor,
    limits: limits / unit.factor,
    coverageFactor,
  };
}

describe('doubt against published figures', () => {
  // Source: JCGM 100:2008 (GUM), 4.3.7 and 4.3.8: 14 × 10⁻⁶ of the reading and 2 × 10⁻⁶ of a 1 V range.
  const voltmeter = 'm = meter(reading: 0.0014 %, range: 2 µV)\n';

  it('a voltmeter reading: limits 15 µV, u = 8.7 µV', () => {
    const { limits, standard } = known(`${voltmeter}0.928571 V by m`, 'µV');
    near(limits, 15, 1e-3);
    near(standard, 8.7, 6e-3);
  });

  // Source: JCGM 100:2008 (GUM), 5.1.5.
  it('with 12 µV from repeated readings: 15 µV together', () => {
    const { standard } = known(`${voltmeter}measured(0.928571 V by m, standard: 12 µV)`, 'µV');
    near(standard, 15, 0.02);
  });

  // Source: JCGM 100:2008 (GUM), 4.3.4: 129 µΩ at 99 %, which is 2.576 standard deviations.
  it('a resistor of ± 129 µΩ at 99 %: u = 50 µΩ', () => {
    const { standard, coverageFactor } = known('measured(10.000742 Ω, standard: 129 µΩ / 2.576)', 'µΩ');
    near(standard, 50, 2e-3);
    assert.equal(coverageFactor, 2);
  });

  // Source: EA-4/02 M:2022, example S9: standard uncertainties 0.029 V and 0.0064 V rectangular, 0.001 V. The example
  // takes k = 1.65, that of the largest term alone; ours counts the others too, k = 1.71, and U rounds to the same.
  it('one rectangular term that dominates: u = 0.030 V, U = 0.05 V', () => {
    const text =
      'a = 0 V ± 0.029 V * sqrt(3)\nb = 0 V ± 0.0064 V * sqrt(3)\nc = measured(100 V, standard: 0.001 V)\na + b + c';
    const { standard, coverageFactor, half } = known(text, 'V');
    near(standard, 0.03, 0.02);
    assert.ok(coverageFactor > 1.65 && coverageFactor < 1.72, `${coverageFactor}`);
    assert.equal(half.toFixed(2), '0.05');
  });

  // Source: EA-4/02 M:2022, S9.14.
  it('one rectangular term alone: k = 1.65, inside the limits', () => {
    const { coverageFactor, half } = known('100 V ± 0.05 V', 'V');
    assert.equal(coverageFactor.toFixed(2), '1.65');
    near(half, 0.95 * 0.05, 1e-9);
  });

  // Source: JCGM 100:2008 (GUM), 4.3.3, 4.3.4 and 4.3.7, whose rules NIST TN 1297 gives in 4.2 to 4.6; figures from
  // memory. A certificate states a multiple of the standard uncertainty, or an interval, or limits.
  it('standard uncertainties from certificates and from limits', () => {
    const standardOf = (text: string, unit: string) => known(text, unit).standard;
    near(standardOf('measured(1000.000325 g, standard: 240 µg / 3)', 'µg'), 80, 1e-9);
    assert.equal(standardOf('measured(10.000742 Ω, standard: 129 µΩ / 2.58)', 'µΩ').toFixed(0), '50');
    assert.equal(standardOf('16.52e-6 1/°C ± 0.40e-6 1/°C', '1/°C').toExponential(1), '2.3e-7');
  });

  // Source: JCGM 100:2008 (GUM), example H.2, tables H.2 and H.4; the correlations with three digits: memory.
  it('resistance, reactance and impedance from correlated readings', () => {
    const inputs = [
      'V = measured(4.9990 V, standard: 0.0032 V)',
      'I = measured(19.6610 mA, standard: 0.0095 mA, with: V, correlation: -0.355)',
      'phi = measured(1.04446, standard: 0.00075, with: V, correlation: 0.858, with: I, correlation: -0.645)',
    ].join('\n');
    for (const [expression, value, u] of [
      ['V / I * cos(phi)', 127.732, 0.071],
      ['V / I * sin(phi)', 219.847, 0.295],
      ['V / I', 254.26, 0.236],
    ] as const) {
      const result = known(`${inputs}\n${expression}`, 'Ω');
      assert.ok(Math.abs(result.value - value) <= 5e-4, `${expression}: ${result.value}`);
      // Half a unit of the last digit printed, and what three digits of the correlations leave open.
      assert.ok(Math.abs(result.standard - u) <= 1e-3, `${expression}: ${result.standard}`);
    }
  });

  // Source: the same example; without the correlations.
  it('the same readings taken as independent mislead both ways', () => {
    const inputs =
      'V = measured(4.999 V, standard: 0.0032 V)\nI = measured(19.661 mA, standard: 0.0095 mA)\nphi = measured(1.04446, standard: 0.00075)';
    near(known(`${inputs}\nV / I * cos(phi)`, 'Ω').standard, 0.194, 6e-3);
    near(known(`${inputs}\nV / I * sin(phi)`, 'Ω').standard, 0.201, 6e-3);
    near(known(`${inputs}\nV / I`, 'Ω').standard, 0.204, 6e-3);
  });

  // Source: an article on the accuracy of digital multimeters: ±(1 % + 3 counts), 120.0 V.
  it('±(1 % + 3 digits) at 120.0 V: 1.5 V', () => {
    near(known('m = meter(reading: 1 %, digits: 3)\n120.0 V by m', 'V').limits, 1.5, 1e-12);
  });

  // Source: common practice, no source; worked by hand: 0.8 % of 14.4 Ω and five digits of 0.1 Ω.
  it('±(0.8 % + 5 digits) at 14.4 Ω: 0.615 Ω, and 15.98 A to 17.41 A at 240 V', () => {
    const reading = 'm = meter(reading: 0.8 %, digits: 5)\nR = 14.4 Ω by m\n';
    near(known(`${reading}R`, 'Ω').limits, 0.6152, 1e-12);
    const { value, limits } = known(`${reading}240 V / R`, 'A');
    // The published ends are exact quotients; linear limits leave out the second order, I δ².
    const second = value * (0.6152 / 14.4) ** 2;
    assert.ok(Math.abs(value - limits - 15.98) <= second + 0.005, `${value - limits}`);
    assert.ok(Math.abs(value + limits - 17.41) <= second + 0.005, `${value + limits}`);
  });
});

describe('doubt of a reel measured by its resistance', () => {
  const temperature = 'temperature: 20 °C ± 3 °C';
  const bench = `m = meter(reading: 0.010 %, range: 0.004 Ω)
reel = conductor_length(0.4030 Ω by m, 12 AWG Cu solid, leads: 0 Ω, ${temperature}) * (1 ± 2 %)\n`;
  const field = `m = meter(reading: 0.8 %, digits: 5)
reel = conductor_length(0.4 Ω by m, 12 AWG Cu solid, leads: 0 Ω, ${temperature}) * (1 ± 2 %)\n`;

  // Source: worked by hand from NEC Chapter 9 Table 8 (1.93 Ω/kft, α 0.00323 at 75 °C); 2 % for the wire, 3 °C for the
  // reel: common practice, no source.
  it('four wires and a bench meter: 253.9 ft, u = 1.46 %, U = 7.4 ft', () => {
    const { value, standard, half } = known(`${bench}reel`, 'ft');
    near(value, 253.9, 2e-4);
    near(standard / value, 0.0146, 4e-3);
    near(half, 7.4, 7e-3);
  });

  it('enough for 240 ft, not for 265 ft, and 250 ft cannot be told', () => {
    for (const [need, verdict] of [
      ['240 ft', true],
      ['250 ft', 'cannot tell'],
      ['265 ft', false],
    ] as const) {
      const answer = valueOf(`${bench}reel >= ${need}`);
      assert.ok(answer.kind === 'boolean');
      assert.equal(answer.value, verdict, need);
      assert.equal(answer.doubt?.dominant, verdict === 'cannot tell' ? '`1 ± 2 %`' : undefined);
    }
  });

  it('a field meter of 0.1 Ω: 252 ft ± 317 ft by its limits, and 75 ft cannot be told', () => {
    const { value, limits } = known(
      `${field.replace(temperature, 'temperature: 20 °C').replace(' * (1 ± 2 %)', '')}reel`,
      'ft',
    );
    near(value, 252, 1e-3);
    near(limits, 317, 1e-3);
    const answer = valueOf(`${field}reel >= 75 ft`);
    assert.ok(answer.kind === 'boolean');
    assert.equal(answer.value, 'cannot tell');
    assert.equal(answer.doubt?.dominant, '`0.4 Ω by m`');
  });
});

// Source: Python's uncertainties, a general-purpose library for linear propagation; how the figures were made stands
// in the file.
describe('linear propagation equals that of a general-purpose library', () => {
  const defined = Object.entries(sources).map(([name, [value, u]]) => `${name} = measured(${value}, standard: ${u})`);
  for (const [expression, value, standard] of expressions as [string, number, number][]) {
    it(expression, () => {
      const ours = known(`${defined.join('\n')}\n${expression}`, '');
      near(ours.value, value, 1e-12);
      near(ours.standard, standard, 1e-12);
    });
  }
});
