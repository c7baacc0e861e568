import assert from 'node:assert/strict';
import { conductorText } from '../../src/functions';
import { circuitFact } from '../functions/circuit-fact';
import { near } from '../functions/sheet';

/** What lints read of a circuit, in situations of trade threads; the values themselves stand in `examples/`. */
describe('facts of circuits in the field', () => {
  // Source: “Code Q&A: Electric water heaters”.
  it('a 4500 W storage heater: what keeps 12 AWG off, and which sizes do', () => {
    const small = circuitFact(
      'load: 4500 W, voltage: 240 V, kind: water_heater, terminals: 75 °C, conductor: 12 AWG Cu THHN',
    );
    near(small.requiredAmpacity, 23.44, 5e-3);
    assert.equal(small.totalAmpacity, 25);
    assert.equal(small.smallConductorLimit, 20);
    assert.equal(small.smallestOcpd, 25);
    assert.deepEqual(small.sufficient.map(conductorText), ['10 AWG Cu THHN', '8 AWG Cu THHN', '6 AWG Cu THHN']);
  });

  // Source: thread “EV Charger”.
  it('a 48 A vehicle load on 6 AWG NM-B: the cable holds the terminals’ column, and 4 AWG is the next that does', () => {
    const fact = circuitFact('load: 48 A, kind: evse, conductor: 6 AWG Cu NM-B, ocpd: 60 A');
    assert.equal(fact.largestOcpd, 60);
    assert.equal(fact.ampacity.terminalsFrom, 'cable');
    assert.equal(conductorText(fact.sufficient[0]), '4 AWG Cu NM-B');
    const pipe = circuitFact('load: 48 A, kind: evse, conductor: 6 AWG Cu THHN, terminals: 75 °C, ocpd: 60 A');
    assert.equal(conductorText(pipe.sufficient[0]), '6 AWG Cu THHN');
  });

  // Source: “630.12 over current protection for welders”.
  it('a welder has no small-conductor limit', () => {
    const fact = circuitFact('kind: welder, load: 50 A, duty: 20 %, conductor: 10 AWG Cu NM-B, ocpd: 50 A');
    assert.equal(fact.smallConductorLimit, undefined);
  });

  // Source: NEC Table 630.11(A), multipliers for 20 to 100 % duty (memory).
  it('the welder multipliers are those of the table', () => {
    const printed = [0.45, 0.55, 0.63, 0.71, 0.78, 0.84, 0.89, 0.95, 1];
    printed.forEach((multiplier, i) => {
      const fact = circuitFact(`kind: welder, load: 100 A, duty: ${20 + 10 * i} %`);
      near(fact.requiredAmpacity, 100 * multiplier, 1e-9);
    });
  });

  // Source: “Sizing Feeders for Voltage Drop”; 3 % is advice in notes to NEC 210.19 and 215.2.
  it('a drop is held against the advised 3 % where the sheet sets no limit', () => {
    const fact = circuitFact('load: 200 A, voltage: 240 V, length: 170 ft, conductor: 4/0 AWG Al XHHW-2');
    assert.equal(fact.drop?.limitPercent, 3);
    assert.equal(fact.drop?.limitGiven, false);
  });
});
