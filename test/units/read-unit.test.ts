import assert from 'node:assert/strict';
import fc from 'fast-check';
import { codesOf } from '../../src/text';
import { parseUnit, readUnit, unitWords } from '../../src/units';

/** What is read of `text` behind a number and a space. */
const read = (text: string): string => {
  const line = `5 ${text}`;
  return line.slice(2, readUnit(codesOf(line), 2));
};

describe('readUnit', () => {
  const cases: readonly (readonly [text: string, unit: string])[] = [
    ['V', 'V'],
    ['V * I', 'V'],
    ['V / I', 'V'],
    ['V/I', 'V'],
    ['V/A', 'V/A'],
    ['V/ A', 'V'],
    ['Ω/kft + 1', 'Ω/kft'],
    ['Ω·cmil/ft)', 'Ω·cmil/ft'],
    ['1/°C', '1/°C'],
    ['1/2 in', ''],
    ['1/x', ''],
    ['mV/(A·m)*3', 'mV/(A·m)'],
    ['V/(R·m)', 'V'],
    ['V/(A', 'V'],
    ['m^2', 'm^2'],
    ['m^-1', 'm^-1'],
    ['m^n', 'm'],
    ['m^2.5', 'm'],
    ['m^12', 'm'],
    ['V^(1/2)', 'V^(1/2)'],
    ['mm²', 'mm²'],
    ['mm2', 'mm2'],
    ['V2', ''],
    ['Vx', ''],
    ['V_drop', ''],
    ['V₁', ''],
    ['°C', '°C'],
    ['°Cx', ''],
    ['°', '°'],
    ['Δ°C', 'Δ°C'],
    ['% of it', '%'],
    ['%x', ''],
    ['kWh', 'kWh'],
    ['USD/ft', 'USD/ft'],
    ['AWG Cu', ''],
    ['volts', ''],
    ['aVeryLongNameOfSomethingElse', ''],
    ['', ''],
    ['+', ''],
    ['V·', 'V'],
  ];
  for (const [text, unit] of cases) {
    it(`reads ${unit || 'nothing'} of ${text || 'nothing'}`, () => assert.equal(read(text), unit));
  }

  it('reads every unit word whole', () => {
    for (const word of unitWords.keys()) {
      assert.equal(read(word), word);
      assert.equal(read(`${word}zz`), '', `${word}zz`);
    }
  });

  it('reads only what parses as a unit, and stays inside the text', () => {
    const parts = fc.constantFrom('V', 'kft', 'A', '/', '·', '^', '2', '(', ')', '²', '°C', '1/', ' ', '*', '%', 'x');
    fc.assert(
      fc.property(fc.array(parts), (pieces) => {
        const text = pieces.join('');
        const end = readUnit(codesOf(text), 0);
        assert.ok(end >= 0 && end <= text.length);
        assert.ok(!('problem' in parseUnit(text.slice(0, end))), text.slice(0, end));
      }),
    );
  });
});
