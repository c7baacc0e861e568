import assert from 'node:assert/strict';
import { inUnit, programOf, shown, valueOf } from '../run-cells';

/** Text of a cell, and its last statement's value in the unit that the language shows it in. */
const cases: readonly (readonly [text: string, value: string])[] = [
  ['207.6 V / 11.9 Ω', '17.4453781513 A'],
  ['240 V * 20 A', '4800 W'],
  ['240 V * 20 A in kW', '4.8 kW'],
  ['240 V * 20 A in kVA', '4.8 kVA'],
  ['5 kVA * 0.8', '4 kVA'],
  ['6 kW / 8 kVA', '0.75'],
  ['2.5 % * 240 V', '6 V'],
  ['240 V * (1 + 3 %)', '247.2 V'],
  ['3 V / 120 V in %', '2.5 %'],
  ['500 mA + 1 A', '1500 mA'],
  ['100 ft + 12 in', '101 ft'],
  ['1.98 Ω/kft * 62 ft', '0.12276 Ω'],
  ['sqrt((3 V)^2 + (4 V)²)', '5 V'],
  ['2 ^ 10', '1024'],
  ['-3 A', '-3 A'],
  ['-(3 A) + 1 A', '-2 A'],
  ['68 °F - 20 °C', '0 Δ°F'],
  ['20 °C + 5 K', '25 °C'],
  ['-10 °C - 5 K', '-15 °C'],
  ['20 °C in °F', '68 °F'],
  ['20 °C in K', '293.15 K'],
  ['1 + 0.00393 1/°C * (75 °C - 20 °C)', '1.21615'],
  ['0.55 USD/ft * 62 ft', '34.1 USD'],
  ['if 3 V > 2 V then 1 A else 2 A', '1 A'],
  ['if no then 1 A / 0 else 2 A', '2 A'],
  ['x = 3\nif x > 2 and not (x > 5) then 10 else 20', '10'],
  ['f(a, b) = a * b + a\nf(3, 4)', '15'],
  ['f(a) = a * k\nk = 2 V\nf(3 A)', '6 W'],
  ['g(x) = f(x) + 1\nf(x) = x * 2\ng(4)', '9'],
  ['input run = 85 ft from 5 ft to 400 ft "length"\nrun * 2', '170 ft'],
  ['min(3 A, 500 mA, 4 A)', '0.5 A'],
  ['max([3 A, 5 A])', '5 A'],
  ['mean(20 °C, 30 °C)', '25 °C'],
  ['sum([1 A, 2 A, 500 mA]) in mA', '3500 mA'],
  ['count(1, 2, 3)', '3'],
  ['round(83 ft, 5 ft)', '85 ft'],
  ['round(-2.5)', '-3'],
  ['ceil(0.3 m, 0.1 m)', '0.3 m'],
  ['floor(7.9)', '7'],
  ['round(3.4 %)', '3 %'],
  ['abs(3 A - 5 A)', '2 A'],
  ['sin(30 °)', '0.5'],
  ['acos(0.5) in °', '60 °'],
  ['atan2(3 kvar, 3 kW) in °', '45 °'],
  ['ln(exp(2))', '2'],
  ['log10(1000)', '3'],
  ['2 * pi', '6.28318530718'],
  ['pi = 3\npi', '3'],
  ['drop(5 A).volts', '5 V'],
  ['drop(5 A, metal: Al).volts', '10 V'],
  ['drop(5 A, metal: Al).metal', 'Al'],
  ['drop(5 A, load: 3 kVA).unit', 'VA'],
  ['drop(5 A, load: 3 kW).unit', 'W'],
  ['drop(5 A, load: 3 V * 2 A).unit', 'W'],
  ['drop(5 A, long: yes).limit', '5 V'],
  ['d = drop\n  current: 500 mA\n  long: 3 V > 2 V\nd.volts + d.limit', '5.5 V'],
  ['check drop(5 A).metal == Cu', 'yes'],
  ['check 1 ft == 0.3048 m', 'yes'],
  ['check 1 ft <= 0.3048 m and 1 ft >= 0.3048 m and not (1 ft < 0.3048 m)', 'yes'],
  ['check 10 AWG red == 10 AWG red', 'yes'],
  ['check 10 AWG red != 12 AWG red', 'yes'],
  ['check "a" == "b"', 'no'],
  ['check 1 V > 2 V or 3 A > 2 A', 'yes'],
  ['weight(10 AWG red, count: 3)', '6 kg'],
];

describe('values', () => {
  for (const [text, value] of cases) {
    it(`${text.replaceAll('\n', ' ⏎ ')} is ${value}`, () => {
      assert.equal(shown(valueOf(text)), value);
    });
  }

  it('a derived unit is marked, a written one is not', () => {
    const derived = valueOf('240 V / 12 Ω');
    const written = valueOf('240 V / 12 Ω in A');
    assert.ok(derived.kind === 'quantity' && derived.unitIsDerived);
    assert.ok(written.kind === 'quantity' && !written.unitIsDerived);
  });

  it('converts by exact factors: 1 kft is 304.8 m (NIST SP 811)', () => {
    assert.equal(inUnit('1 kft', 'm'), 304.8);
  });

  it('a field without value says why, and the record stands', () => {
    const program = programOf('d = drop(5 A)');
    const value = program.results('0')[0].value;
    assert.ok(value?.kind === 'record');
    assert.deepEqual(value.fields.get('limit'), { kind: 'absent', because: 'the run is short.' });
  });

  it('what hangs on a failed name has no value and names it, without a second report', () => {
    const program = programOf('a = 1 V / 0', 'b = a + 1 V\nc = b * 2\nok = 5 V');
    assert.deepEqual(
      program.results('1').map(({ value, missing }) => [shown(value), missing]),
      [
        ['nothing', ['a']],
        ['nothing', ['b']],
        ['5 V', undefined],
      ],
    );
    assert.deepEqual(program.diagnostics('1'), []);
    assert.deepEqual(
      program.diagnostics('0').map(({ code }) => code),
      ['division-by-zero'],
    );
  });

  it('checks carry verdict and label', () => {
    const [labelled, bare] = programOf('check 3 V > 2 V "enough"\ncheck 1 A > 2 A').results('0');
    assert.deepEqual([labelled.verdict, labelled.label], ['yes', 'enough']);
    assert.deepEqual([bare.verdict, bare.label], ['no', '1 A > 2 A']);
  });
});
