import assert from 'node:assert/strict';
import fc from 'fast-check';
import { hoverAt } from '../../src/editor';
import { SheetSession } from '../../src/session';

const sheet = `bench = meter(reading: 1 %, digits: 2)
panel = schedule
  | tag  | phase | load             | voltage     | length | conductor         | ocpd | on                      |
  | ---  | ---   | ---              | ---         | ---    | ---               | ---  | ---                     |
  | P1   | A     | 9.2 kVA          | 208 V       | 85 ft  | 6 AWG Cu THHN     | 50 A | yes                     |
  | P2   | B     | 1.5 kVA by bench | 120 V ± 2 V |        | 12 AWG Cu THHN    | 20 A | no                      |
  | "x"  | LP-3  | (base)           | 120 V       | 60 ft  | 3 * (12 AWG Cu)   | 20 A | if yes then no else yes |
  amps = load / voltage
  drop = voltage_drop(conductor, amps, length) / voltage in %
  big = if amps > 10 A then 1 else 2
base = 2 kVA
on_a = sum(panel.load where panel.phase == "A" and known(panel.load))
check all(panel.drop <= 3 %) "drop"
bundle = 3 * (12 AWG Cu THHN) + [2 * (10 AWG Cu), 8 AWG Cu bare]
`;

const pieces = [
  '|',
  '"',
  '(',
  ')',
  '[',
  ']',
  ' where ',
  'known(',
  '* ',
  '- ',
  'panel.',
  '\n',
  '  ',
  '9e999',
  ' by bench',
  ' ± 1 V',
  'load',
  'schedule',
  '// ',
  '= ',
  'amps',
  '%',
  ' in A',
  'all(',
  '__proto__',
  'constructor',
  '0 V',
];

const slip = fc.record({ at: fc.nat(sheet.length), cut: fc.nat(12), put: fc.constantFrom('', ...pieces) });

describe('a sheet with schedules, slips of the pen and all', () => {
  it('never fails, and is whole again once they are mended', () => {
    const whole = new SheetSession();
    whole.update([{ id: 'cell', kind: 'calculation', text: sheet }]);
    const expected = whole.outputs('cell');
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 6 }), fc.nat(sheet.length), (slips, offset) => {
        let text = sheet;
        for (const { at, cut, put } of slips) {
          text = text.slice(0, at) + put + text.slice(at + cut);
        }
        const session = new SheetSession();
        session.update([{ id: 'cell', kind: 'calculation', text }]);
        session.outputs('cell');
        for (const { span } of session.diagnostics('cell')) {
          assert.ok(span.start >= 0 && span.start <= span.end && span.end <= text.length);
        }
        hoverAt(session, 'cell', offset);
        session.update([{ id: 'cell', kind: 'calculation', text: sheet }]);
        assert.deepEqual(session.outputs('cell'), expected);
      }),
      { numRuns: 80 },
    );
  });
});
