import assert from 'node:assert/strict';
import { ampacityFact } from './circuit-fact';
import { errorOf, inUnit, near } from './sheet';

/** Cells of NEC Table 310.16, 310.15(B)(1)(1) and 310.15(C)(1), read in public reproductions and typed again here. */
describe('ampacity', () => {
  const cases: readonly (readonly [call: string, amperes: number, how: string])[] = [
    ['ampacity(14 AWG Cu THHN)', 15, '60 °C terminals by rule'],
    ['ampacity(10 AWG Cu THHN)', 30, '60 °C terminals by rule'],
    ['ampacity(1 AWG Cu THHN)', 110, '60 °C terminals by rule, the last such size'],
    ['ampacity(1/0 AWG Cu THHN)', 150, '75 °C terminals by rule, the first such size'],
    ['ampacity(1/0 AWG Al XHHW-2)', 120, '75 °C terminals by rule'],
    ['ampacity(6 AWG Cu THHN, terminals: 75 °C)', 65, 'terminals as given'],
    ['ampacity(6 AWG Cu THHN, terminals: 90 °C)', 75, 'terminals as given'],
    ['ampacity(6 AWG Cu NM-B, terminals: 75 °C)', 55, 'cable held to 60 °C'],
    ['ampacity(6 AWG Cu UF-B, terminals: 75 °C)', 55, 'cable held to 60 °C'],
    ['ampacity(6 AWG Cu TW, terminals: 75 °C)', 55, 'insulation is the lesser'],
    ['ampacity(12 AWG Cu NM-B, bundled: 9)', 20, 'derated from 90 °C: 21 A, held to 20 A'],
    ['ampacity(12 AWG Cu THHN, bundled: 10)', 15, '30 A × 0.5'],
    ['ampacity(3/0 AWG Cu THHN, ambient: 50 °C)', 184.5, '225 A × 0.82'],
    ['ampacity(3/0 AWG Cu THHN, ambient: 104 °F)', 200, '225 A × 0.91 = 204.75 A, terminals 200 A'],
    ['ampacity(3/0 AWG Cu THHN, ambient: 30.4 °C)', 200, 'counts as 31 to 35 °C: 216 A, terminals 200 A'],
    ['ampacity(12 AWG Cu, insulation: THHN)', 20, 'insulation named in the call'],
  ];
  for (const [call, amperes, how] of cases) {
    it(`${call} is ${amperes} A: ${how}`, () => near(inUnit(call, 'A'), amperes, 1e-12));
  }

  it('leaves a fact with each factor and the chain in words', () => {
    const fact = ampacityFact('ampacity(8 AWG Cu THHN, ambient: 35 °C, bundled: 9)');
    assert.equal(fact.insulationColumn, 90);
    assert.deepEqual([fact.base, fact.ambientFactor, fact.bundlingFactor], [55, 0.96, 0.7]);
    near(fact.derated, 36.96, 1e-12);
    assert.deepEqual([fact.terminalColumn, fact.terminalBase, fact.terminalsFrom], [60, 40, 'rule']);
    assert.equal(fact.limitedBy, 'derating');
    assert.equal(fact.chain, '8 AWG Cu THHN: 55 A (90 °C column) × 0.96 × 0.7 = 36.96 A; terminals 60 °C allow 40 A');
  });

  const failures: readonly (readonly [call: string, code: string, message: RegExp])[] = [
    ['ampacity(12 AWG Cu)', 'insulation-missing', /12 AWG Cu THHN/],
    ['ampacity(4 AWG Cu bare)', 'bare-conductor', /bare/],
    ['ampacity(12 AWG Cu THHN, insulation: TW)', 'contradictory-insulation', /THHN.*TW/],
    ['ampacity(12 AWG Cu THHN, terminals: 80 °C)', 'unknown-terminal-rating', /60 °C, 75 °C or 90 °C/],
    ['ampacity(12 AWG Cu THHN, bundled: 3.5)', 'not-a-count', /whole number/],
    ['ampacity(12 AWG Cu TW, ambient: 70 °C)', 'ambient-too-hot', /higher-rated/],
    ['ampacity(18 AWG Cu THHN)', 'not-in-table', /larger size/],
    ['ampacity(14 AWG Al THHN)', 'not-in-table', /larger size/],
    ['ampacity(24 AWG Cu THHN)', 'not-in-table', /24 AWG/],
  ];
  for (const [call, code, message] of failures) {
    it(`${call} says ${code}`, () => {
      const error = errorOf(call);
      assert.equal(error.code, code);
      assert.match(error.message, message);
    });
  }
});
