import assert from 'node:assert/strict';
import { circuitKinds, conductorText } from '../../src/functions';
import { kindOfCircuit } from '../../src/functions/circuit/kinds/kinds';
import { circuitFact } from './circuit-fact';
import { inUnit, near, stepsOf, textOf } from './sheet';

const field = (fields: string, name: string) => inUnit(`x = circuit(${fields})\nx.${name}`, 'A');
const conductor = (fields: string) => textOf(`x = circuit(${fields})\nx.conductor`);

describe('every kind of circuit', () => {
  for (const kind of circuitKinds) {
    it(`${kind} has rules of its own`, () => assert.ok(kindOfCircuit(kind).kinds.includes(kind)));
  }
});

describe('a feeder tap', () => {
  // Source: “NEC rules for tapping feeders”; reposted tap-rule questions, 240.21(B)(1) and (2).
  it('on 400 A: 40 A for 8 ft; 133.3 A and so 1/0 Cu for 20 ft', () => {
    near(circuitFact('kind: tap, ocpd: 400 A, length: 8 ft').requiredAmpacity, 40, 1e-12);
    const long = 'kind: tap, ocpd: 400 A, length: 20 ft';
    near(circuitFact(long).requiredAmpacity, 400 / 3, 1e-12);
    assert.equal(conductor(long), '1/0 AWG Cu THHN');
    assert.equal(field(long, 'ampacity'), 150);
    assert.equal(field(long, 'ocpd'), 400);
  });

  // Source: trade forum thread on the 10 ft tap rule: 300 A, 30 A, 10 AWG.
  it('on 300 A, 10 ft, 75 °C terminals: 30 A and 10 AWG', () => {
    const fields = 'kind: tap, ocpd: 300 A, length: 10 ft, terminals: 75 °C';
    near(circuitFact(fields).requiredAmpacity, 30, 1e-12);
    assert.equal(conductor(fields), '10 AWG Cu THHN');
  });

  it('carries its own load where that is more', () => {
    near(circuitFact('kind: tap, ocpd: 400 A, length: 8 ft, load: 60 A').requiredAmpacity, 60, 1e-12);
    near(circuitFact('kind: tap, ocpd: 400 A, length: 8 ft, load: 60 A, continuous: yes').requiredAmpacity, 75, 1e-12);
  });
});

describe('a transformer circuit', () => {
  // Source: wiring textbook on transformer protection: 25 kVA, 480 V, 52.1 A, 65.1 A, next size 70 A.
  it('takes its device from the transformer’s table and its conductor from the device', () => {
    const fields = 'kind: transformer, load: 25 kVA, voltage: 480 V';
    near(field(fields, 'load_current'), 52.0833, 1e-5);
    assert.equal(field(fields, 'ocpd'), 70);
    // NEC Table 310.16: 4 AWG carries 70 A at 60 °C; 6 AWG carries 65 A at 75 °C, and 70 A is the next standard size.
    assert.equal(conductor(fields), '4 AWG Cu THHN');
    assert.equal(conductor(`${fields}, terminals: 75 °C`), '6 AWG Cu THHN');
  });
});

describe('a fire pump', () => {
  // Source: “Illustrated changes 2005, Article 695”: 25 hp, 208 V: 74.8 A, 93.5 A, 3 AWG; device holds 404 A.
  it('of 25 hp at 208 V has conductors for 93.5 A and a device for 404 A', () => {
    const fields = 'kind: fire_pump, load: 25 hp, voltage: 208 V, phases: 3';
    assert.equal(field(fields, 'load_current'), 74.8);
    near(field(fields, 'design_current'), 93.5, 1e-12);
    assert.equal(conductor(fields), '3 AWG Cu THHN');
    assert.equal(field(fields, 'ocpd'), 450);
    assert.equal(textOf(`x = circuit(${fields})\nx.egc`), '3 AWG Cu');
  });
});

describe('a flexible cord', () => {
  // Source: “overcurrent protection for 16 AWG extension cords”; NEC 240.5(B), a cord made up in the field.
  it('of 16 AWG may stand behind 20 A', () => {
    const fact = circuitFact('kind: cord, load: 12 A, conductor: 16 AWG Cu, ocpd: 20 A');
    assert.equal(fact.totalAmpacity, 13);
    assert.equal(fact.ocpd, 20);
    assert.equal(fact.smallConductorLimit, undefined);
    assert.deepEqual(fact.sufficient.map(conductorText).slice(0, 1), ['16 AWG Cu']);
    assert.equal(conductor('kind: cord, load: 16 A'), '14 AWG Cu');
    assert.equal(conductor('kind: cord, load: 28 A, ocpd: 30 A'), '10 AWG Cu');
  });

  it('says that its table is from memory', () => {
    const tables = stepsOf('x = circuit(kind: cord, load: 12 A)').flatMap((step) =>
      step.kind === 'table' ? [step.source] : [],
    );
    assert.equal(tables.find(({ table }) => table.includes('400.5'))?.basis, 'memory');
  });
});

describe('welders', () => {
  it('of each type have multipliers of their own', () => {
    near(circuitFact('kind: welder, load: 50 A, duty: 20 %').requiredAmpacity, 22.5, 1e-12);
    near(circuitFact('kind: welder, load: 50 A, duty: 20 %, welder: motor_generator').requiredAmpacity, 27.5, 1e-12);
    // NEC Table 630.31(A), 30 % is .55 (trade notes); device 300 % of 60 A by 630.32 (memory).
    const spot = 'kind: welder, load: 60 A, duty: 30 %, welder: resistance';
    near(circuitFact(spot).requiredAmpacity, 33, 1e-12);
    assert.equal(field(spot, 'ocpd'), 200);
  });
});
