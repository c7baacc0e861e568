import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createProgram } from '../../src/language';
import { lint } from '../../src/lints';
import '../fuzz-seed';
import { library, programOf } from './lint-text';

/** Statements that lints speak of, with others that decide whether they do; they hang on one another across cells. */
const statements = [
  'reading = 0.48 Ω',
  'reading = 0.48 Ω // four-wire',
  'reading = 4.8 V / 10 A',
  'reading = 0.4 Ω by pocket',
  'pocket = meter(reading: 0.8 %, digits: 5)',
  'rate = 1.98 Ω/kft',
  'rate = resistance_per_length(12 AWG Cu stranded)',
  'rate = resistance_per_length(12 AWG Cu stranded, temperature: 20 °C)',
  'left = reading / rate in ft',
  'left = conductor_length(reading, wire)',
  'wire = 12 AWG Cu stranded THHN',
  'wire = 14 AWG Cu solid THHN',
  'run = 160 ft',
  'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: run, conductor: wire)',
  'allow voltage-drop "lamps do not mind"',
  'allow unused-name "for a later sheet"',
  'tank = heater(resistance: reading, voltage: 240 V)',
  'tank = heater(resistance: reading, voltage: 240 V, isolated: yes)',
  'second = heater(resistance: 25.6 Ω, voltage: 240 V)',
  'check tank.power >= 2 kW "gives its heat"',
  'allowed = ampacity(wire)',
  'check allowed >= 22 A "carries it"',
  'nine = 0.7 * allowed',
  'leg_a = 96 V',
  'leg_b = 145 V',
  'across = 241 V',
  'spread = (leg_b - leg_a) / across',
  'panel = schedule\n  | load | conductor | voltage |\n  | --- | --- | --- |\n  | 30 A | 12 AWG Cu THHN | 240 V |\n  | 5 A | wire | 240 V |',
  'broken = (1 +',
];
const proses = ['# A sheet', 'The part was disconnected and proved dead.', 'The run is `= run in m` long.'];

const cell = fc
  .array(fc.constantFrom(...statements), { maxLength: 4 })
  .map((lines) => lines.map((line) => `${line}\n`).join(''));
const sheet = fc.record({ cells: fc.array(cell, { minLength: 1, maxLength: 4 }), prose: fc.constantFrom(...proses) });

describe('lints after edits', () => {
  it('find what a new program finds, whatever was edited', () => {
    fc.assert(
      fc.property(fc.array(sheet, { minLength: 2, maxLength: 5 }), (steps) => {
        const program = createProgram(library);
        for (const { cells, prose } of steps) {
          const ids = cells.map((_, i) => String(i));
          program.update(cells.map((text, i) => ({ id: String(i), text })));
          assert.deepEqual(lint(program, ids, { prose: [prose] }), lint(programOf(...cells), ids, { prose: [prose] }));
        }
      }),
      { numRuns: 150 },
    );
  });
});
