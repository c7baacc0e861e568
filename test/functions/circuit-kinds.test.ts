import assert from 'node:assert/strict';
import { circuitKinds, conductorText } from '../../src/functions';
import { kindOfCircuit } from '../../src/functions/circuit/kinds/kinds';
import { circuitFact } from './circuit-fact';
import { inUnit, near, run, stepsOf, textOf } from './sheet';

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
    // NEC Table 630.31(A), 30 % is .55 (trade notes).
    const spot = 'kind: welder, load: 60 A, duty: 30 %, welder: resistance';
    near(circuitFact(spot).requiredAmpacity, 33, 1e-12);
    // Source: a public reprint of NEC 2008 Article 630 on electric welders: 630.32(B), 300 % of the conductor.
    assert.equal(field(spot, 'ocpd'), 100);
  });

  // Source: the same reprint, 630.12(A) and (B): 200 % of the welder's current, and of its conductor's ampacity.
  it('hold the device to the conductor and to the welder', () => {
    const arc = 'kind: welder, load: 50 A, duty: 20 %';
    assert.equal(circuitFact(`${arc}, conductor: 10 AWG Cu NM-B`).deviceBounds?.largest, 60);
    assert.equal(circuitFact(`${arc}, conductor: 3 AWG Cu THHN`).deviceBounds?.largest, 100);
    assert.equal(field(arc, 'ocpd'), 45);
  });
});

describe('the device of a motor', () => {
  const bounds = (fields: string) => {
    const { usual, largest } = circuitFact(`kind: motor, voltage: 230 V, phases: 3, ${fields}`).deviceBounds!;
    return [usual, largest];
  };

  // Source: NEC 430.52(C)(1): first choice and next size up in a web reprint of the table; breakers in Exception 2 in
  // a code newsletter, fuses in Exception 2 from memory. 22 A: 175 % = 38.5 A, 225 % = 49.5 A; 250 % = 55 A,
  // 400 % = 88 A; 300 % = 66 A.
  it('has a first choice and a ceiling by its type', () => {
    assert.deepEqual(bounds('load: 22 A, device: time_delay_fuse'), [40, 45]);
    assert.deepEqual(bounds('load: 22 A, device: breaker'), [60, 80]);
    assert.deepEqual(bounds('load: 22 A, device: fuse'), [70, 80]);
    assert.deepEqual(bounds('load: 22 A'), [70, 80]);
  });

  it('has a lower ceiling for a breaker above 100 A and for a fuse above 600 A', () => {
    assert.deepEqual(bounds('load: 154 A, device: breaker'), [400, 450]); // 385 A and 462 A
    assert.deepEqual(bounds('load: 180 A, device: fuse'), [600, 600]); // 540 A; 400 % is above 600 A, 300 % is not
  });

  it('may always be its first choice', () => {
    assert.deepEqual(bounds('load: 3 A, device: time_delay_fuse'), [10, 10]); // 5.25 A and 6.75 A
  });
});

describe('what a nameplate says', () => {
  it('binds whatever the kind', () => {
    const fact = circuitFact('load: 12 A, mca: 20 A, voltage: 120 V');
    assert.equal(fact.requiredAmpacity, 20);
    assert.equal(fact.loadCurrent, 12);
    assert.equal(circuitFact('load: 12 A, continuous: yes, mca: 14 A').requiredAmpacity, 15);
    assert.equal(conductor('mca: 28 A, mocp: 40 A'), '10 AWG Cu THHN');
  });
});

describe('a circuit whose metal is said twice', () => {
  it('is asked to keep one', () => {
    assert.deepEqual(
      run('x = circuit(load: 12 A, conductor: 12 AWG Cu THHN, material: Al)').diagnostics.map(({ code }) => code),
      ['contradictory-material'],
    );
  });
});

describe('a welder’s fields', () => {
  it('are not passed over where the circuit feeds something else', () => {
    for (const fields of ['load: 12 A, duty: 20 %', 'load: 12 A, kind: general, welder: arc']) {
      assert.deepEqual(
        run(`x = circuit(${fields})`).diagnostics.map(({ code }) => code),
        ['not-for-this-kind'],
      );
    }
  });
});
