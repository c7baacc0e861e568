import assert from 'node:assert/strict';
import { errorOf, inUnit, textOf } from './sheet';

describe('the smallest conductor', () => {
  // NEC Table 310.16 and 240.4(D); worked by hand.
  const cases: readonly (readonly [call: string, conductor: string, why: string])[] = [
    ['conductor_for(15 A)', '14 AWG Cu THHN', '15 A at 60 °C'],
    ['conductor_for(16 A)', '12 AWG Cu THHN', 'needs a 20 A device, which 14 AWG may not have'],
    ['conductor_for(16 A, continuous: yes)', '12 AWG Cu THHN', '20 A'],
    ['conductor_for(16.1 A, continuous: yes)', '10 AWG Cu THHN', '20.1 A asks for a 25 A device'],
    ['conductor_for(24 A, terminals: 75 °C)', '10 AWG Cu THHN', '12 AWG has 25 A but is limited to 20 A'],
    ['conductor_for(100 A)', '1 AWG Cu THHN', '60 °C terminals up to 100 A'],
    ['conductor_for(110 A)', '2 AWG Cu THHN', '75 °C terminals above 100 A'],
    ['conductor_for(100 A, terminals: 75 °C)', '3 AWG Cu THHN', '100 A at 75 °C'],
    ['conductor_for(20 A, material: Al)', '10 AWG Al THHN', '25 A at 60 °C'],
    ['conductor_for(40 A, insulation: NM-B)', '8 AWG Cu NM-B', '40 A at 60 °C'],
    ['conductor_for(30 A, bundled: 9)', '8 AWG Cu THHN', '10 AWG derates to 28 A'],
    // By 210.19: 125 % is asked before derating (40 A of 40 A), the load itself after it (32 A of 38.5 A).
    ['conductor_for(32 A, bundled: 9, continuous: yes)', '8 AWG Cu THHN', '38.5 A after derating'],
  ];
  for (const [call, conductor, why] of cases) {
    it(`${call} is ${conductor}: ${why}`, () => assert.equal(textOf(call), conductor));
  }

  it('says where none is enough', () => {
    assert.equal(errorOf('conductor_for(5000 A)').code, 'no-sufficient-size');
    assert.equal(errorOf('conductor_for(7000 A)').code, 'no-standard-size');
  });

  // NEC 240.6(A) and 240.4(B) to (D); worked by hand.
  const devices: readonly (readonly [call: string, amperes: number])[] = [
    ['ocpd_for(0.5 A)', 10],
    ['ocpd_for(15 A)', 15],
    ['ocpd_for(15.1 A)', 20],
    ['ocpd_for(16 A, continuous: yes)', 20],
    ['ocpd_for(601 A)', 700],
    ['largest_ocpd(14 AWG Cu THHN, terminals: 75 °C)', 15],
    ['largest_ocpd(12 AWG Al THHN, terminals: 75 °C)', 15],
    ['largest_ocpd(10 AWG Al THHN, terminals: 75 °C)', 25],
    ['largest_ocpd(8 AWG Cu THHN)', 40],
    ['largest_ocpd(6 AWG Cu THHN)', 60],
    ['largest_ocpd(3/0 AWG Cu THHN, ambient: 50 °C)', 200],
  ];
  for (const [call, amperes] of devices) {
    it(`${call} is ${amperes} A`, () => assert.equal(inUnit(call, 'A'), amperes));
  }

  it('says where a grounding conductor is outside the table', () => {
    assert.equal(errorOf('egc_for(6001 A)').code, 'not-in-table');
    assert.equal(errorOf('egc_for(6000 A, area_ratio: 100)').code, 'not-in-table');
  });
});
