import assert from 'node:assert/strict';
import { conductorText } from '../../src/functions';
import { circuitFact } from '../functions/circuit-fact';
import { inUnit, near, textOf } from '../functions/sheet';

const field = (fields: string, name: string) => inUnit(`x = circuit(${fields})\nx.${name}`, 'A');
const conductor = (fields: string) => textOf(`x = circuit(${fields})\nx.conductor`);

/** Situations from trade threads and magazines; sizes and currents as their authors and the NEC tables give them. */
describe('circuits in the field', () => {
  // Source: “NEC Questions and Answers based on 2017 NEC - October 2019”.
  it('9.6 kW heater with a 3 A blower, 60 °C terminals: 43 A, 53.75 A required, 6 AWG, 60 A', () => {
    const fields = 'load: 9.6 kW / 240 V + 3 A, kind: space_heating, terminals: 60 °C';
    near(field(fields, 'load_current'), 43, 1e-9);
    near(field(fields, 'design_current'), 53.75, 1e-9);
    near(circuitFact(fields).requiredAmpacity, 53.75, 1e-9);
    assert.equal(conductor(fields), '6 AWG Cu THHN');
    assert.equal(field(fields, 'ocpd'), 60);
  });

  // Source: “baseboard wiring and Max. wattage calculation”.
  it('three 1500 W baseboards at 240 V: 18.75 A, 23.4 A required, 10 AWG on 25 A', () => {
    const fields = 'load: 3 * 1500 W, voltage: 240 V, kind: space_heating';
    near(field(fields, 'load_current'), 18.75, 5e-3);
    near(field(fields, 'design_current'), 23.4, 5e-3);
    near(circuitFact(fields).requiredAmpacity, 23.4, 5e-3);
    assert.equal(conductor(fields), '10 AWG Cu THHN');
    assert.equal(field(fields, 'ocpd'), 25);
  });

  // Source: “Code Q&A: Electric water heaters”.
  it('4500 W storage heater, 75 °C terminals: 12 AWG fails by the small-conductor limit, 10 AWG does', () => {
    const fields = 'load: 4500 W, voltage: 240 V, kind: water_heater, terminals: 75 °C';
    near(circuitFact(fields).requiredAmpacity, 23.44, 5e-3);
    assert.equal(conductor(fields), '10 AWG Cu THHN');
    const small = circuitFact(`${fields}, conductor: 12 AWG Cu THHN`);
    assert.equal(small.totalAmpacity, 25);
    assert.equal(small.smallConductorLimit, 20);
    assert.equal(small.smallestOcpd, 25);
    assert.deepEqual(small.sufficient.map(conductorText), ['10 AWG Cu THHN', '8 AWG Cu THHN', '6 AWG Cu THHN']);
  });

  // Source: “fixed heat calculation”, number our own.
  it('a 19 A fixed heater asks for 23.75 A and so for 10 AWG', () => {
    const fact = circuitFact('load: 19 A, kind: space_heating, conductor: 12 AWG Cu THHN, terminals: 75 °C');
    near(fact.requiredAmpacity, 23.75, 1e-9);
    assert.equal(fact.ocpd, 25);
    assert.equal(fact.smallConductorLimit, 20);
    assert.equal(conductorText(fact.sufficient[0]), '10 AWG Cu THHN');
  });

  // Source: thread “EV Charger”.
  it('48 A vehicle load on 6 AWG NM-B: 60 A required of 55 A; 4 AWG NM-B or 6 AWG at 75 °C carries it', () => {
    const fact = circuitFact('load: 48 A, kind: evse, conductor: 6 AWG Cu NM-B, ocpd: 60 A');
    near(fact.requiredAmpacity, 60, 1e-9);
    assert.equal(fact.totalAmpacity, 55);
    assert.equal(fact.largestOcpd, 60);
    assert.equal(fact.ampacity.terminalsFrom, 'cable');
    assert.equal(conductorText(fact.sufficient[0]), '4 AWG Cu NM-B');
    const pipe = circuitFact('load: 48 A, kind: evse, conductor: 6 AWG Cu THHN, terminals: 75 °C, ocpd: 60 A');
    assert.equal(pipe.totalAmpacity, 65);
    assert.equal(conductorText(pipe.sufficient[0]), '6 AWG Cu THHN');
  });

  // Source: “Can I install high quality 14-50 here?”, whose claim of 75 A is wrong.
  it('6 AWG THHN carries 65 A at 75 °C terminals and 55 A at 60 °C, not the 75 A of its 90 °C column', () => {
    near(inUnit('ampacity(6 AWG Cu THHN, terminals: 75 °C)', 'A'), 65, 0);
    near(inUnit('ampacity(6 AWG Cu THHN)', 'A'), 55, 0);
  });

  // Source: “Code Q&A” no. 42.
  it('MCA 44 A, MOCP 60 A, 75 °C terminals: 8 AWG on 60 A', () => {
    const fields = 'kind: hvac, mca: 44 A, mocp: 60 A, terminals: 75 °C';
    assert.equal(conductor(fields), '8 AWG Cu THHN');
    assert.equal(field(fields, 'ampacity'), 50);
    assert.equal(field(fields, 'ocpd'), 60);
  });

  // Source: thread “A/C Circuit Breaker”.
  it('MCA 28 A, MOCP 40 A: 10 AWG may stand behind 40 A', () => {
    const fields = 'kind: hvac, mca: 28 A, mocp: 40 A';
    assert.equal(conductor(fields), '10 AWG Cu THHN');
    assert.equal(field(fields, 'ocpd'), 40);
  });

  // Source: “630.12 over current protection for welders”, and “Code Q&A” no. 45.
  it('arc welders: 50 A at 20 % duty asks for 22.5 A, 40 A at 50 % for 28.4 A', () => {
    const first = circuitFact('kind: welder, load: 50 A, duty: 20 %, conductor: 10 AWG Cu NM-B, ocpd: 50 A');
    near(first.requiredAmpacity, 22.5, 1e-12);
    assert.equal(first.totalAmpacity, 30);
    assert.equal(first.smallConductorLimit, undefined);
    near(circuitFact('kind: welder, load: 40 A, duty: 50 %').requiredAmpacity, 28.4, 1e-12);
    assert.equal(conductor('kind: welder, load: 40 A, duty: 50 %'), '10 AWG Cu THHN');
  });

  // Source: NEC Table 630.11(A), multipliers for 20 to 100 % duty (memory).
  it('the welder multipliers are those of the table', () => {
    const printed = [0.45, 0.55, 0.63, 0.71, 0.78, 0.84, 0.89, 0.95, 1];
    printed.forEach((multiplier, i) => {
      const fact = circuitFact(`kind: welder, load: 100 A, duty: ${20 + 10 * i} %`);
      near(fact.requiredAmpacity, 100 * multiplier, 1e-9);
    });
  });

  // Source: thread “Motor branch circuit”; NEC Tables 430.250 and 430.52.
  it('a 7.5 hp, 230 V three-phase motor, 60 °C terminals: 22 A, 27.5 A, 10 AWG, 60 A', () => {
    const fields = 'kind: motor, load: 7.5 hp, voltage: 230 V, phases: 3, terminals: 60 °C';
    assert.equal(field(fields, 'load_current'), 22);
    near(field(fields, 'design_current'), 27.5, 1e-12);
    near(circuitFact(fields).requiredAmpacity, 27.5, 1e-12);
    assert.equal(conductor(fields), '10 AWG Cu THHN');
    assert.equal(field(fields, 'ocpd'), 60);
  });

  // Source: a code trainer's note on the 83 % rule; NEC 310.12.
  it('a 200 A dwelling service: 166 A, 2/0 Cu or 4/0 Al; the same for a shop 3/0 Cu or 250 kcmil Al', () => {
    const service = 'load: 180 A, voltage: 240 V, ocpd: 200 A';
    near(circuitFact(`${service}, kind: dwelling_service`).requiredAmpacity, 166, 1e-12);
    assert.equal(conductor(`${service}, kind: dwelling_service`), '2/0 AWG Cu THHN');
    assert.equal(conductor(`${service}, kind: dwelling_service, material: Al`), '4/0 AWG Al THHN');
    assert.equal(conductor('load: 200 A, ocpd: 200 A'), '3/0 AWG Cu THHN');
    assert.equal(conductor('load: 200 A, ocpd: 200 A, material: Al'), '250 kcmil Al THHN');
  });

  // Source: “Conductor ampacity derating” and “Derating for number of conductors in conduit”.
  it('nine or eight 12 AWG THHN together: 30 A × 0.7 = 21 A, so 20 A stands', () => {
    for (const count of [8, 9]) {
      near(inUnit(`ampacity(12 AWG Cu THHN, bundled: ${count}, terminals: 75 °C)`, 'A'), 21, 1e-12);
      assert.equal(inUnit(`largest_ocpd(12 AWG Cu THHN, bundled: ${count})`, 'A'), 20);
    }
  });

  // Source: “Equipment grounding: CQD spotlight”; NEC 250.122(B).
  it('a 20 A run raised from 12 to 6 AWG takes a 6 AWG grounding conductor', () =>
    assert.equal(
      textOf('x = circuit(load: 16 A, continuous: yes, ocpd: 20 A, conductor: 6 AWG Cu THHN)\nx.egc'),
      '6 AWG Cu',
    ));

  // Source: “Sizing Feeders for Voltage Drop”; 3 % is advice in notes to NEC 210.19 and 215.2.
  it('200 A at 240 V, 170 ft of 4/0 Al: 2.83 %, below the advised 3 %', () => {
    const fact = circuitFact('load: 200 A, voltage: 240 V, length: 170 ft, conductor: 4/0 AWG Al XHHW-2');
    near(fact.drop?.percent ?? 0, 2.83, 5e-3);
    assert.equal(fact.drop?.limitPercent, 3);
    assert.equal(fact.drop?.limitGiven, false);
  });

  // Source: a continuing-education lesson on NEC 2023 Table 240.6(A).
  it('10 A is a standard breaker from 2023 on', () => {
    assert.equal(inUnit('ocpd_for(8 A)', 'A', 'NEC 2023'), 10);
    assert.equal(inUnit('ocpd_for(8 A)', 'A', 'NEC 2020'), 15);
  });
});
