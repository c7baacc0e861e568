import assert from 'node:assert/strict';
import { errorOf, inUnit, near, stepsOf } from './sheet';

const count = (call: string) => inUnit(`current_carrying(${call})`, '');

describe('current_carrying', () => {
  // Source: “Derating for number of conductors in conduit”: four two-wire circuits are eight, 30 A × 0.7 = 21 A.
  it('counts both wires of a two-wire circuit', () => {
    assert.equal(count('two_wire, count: 4'), 8);
    near(
      inUnit('ampacity(12 AWG Cu THHN, bundled: current_carrying(two_wire, count: 4), terminals: 75 °C)', 'A'),
      21,
      1e-12,
    );
  });

  // Source: “Which of the following neutral conductors would be required to be counted”; NEC 310.15(E).
  it('counts the neutral of two lines of a wye, not that of a single-phase circuit', () => {
    assert.equal(count('three_wire_wye'), 3);
    assert.equal(count('three_wire'), 2);
    assert.equal(count('three_phase'), 3);
  });

  it('counts the neutral of a four-wire wye for mostly nonlinear load', () => {
    assert.equal(count('four_wire_wye'), 3);
    assert.equal(count('four_wire_wye, nonlinear: yes'), 4);
    const told = stepsOf('x = current_carrying(four_wire_wye)');
    assert.ok(told.some((step) => step.kind === 'assumption' && /nonlinear not given/.test(step.text)));
    assert.equal(errorOf('current_carrying(two_wire, count: 1.5)').code, 'not-a-count');
  });
});
