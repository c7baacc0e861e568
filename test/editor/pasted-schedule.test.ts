import assert from 'node:assert/strict';
import fc from 'fast-check';
import { isSpreadsheet, pastedSchedule } from '../../src/core';
import { cells } from './marked-cells';

const tabbed = (...rows: string[]) => rows.map((row) => row.replaceAll(' ; ', '\t')).join('\r\n');

function pasted(clipboard: string, sheet = 'x = 1') {
  const made = pastedSchedule(cells(sheet).session, clipboard);
  assert.ok(!('problem' in made), 'problem' in made ? made.problem : '');
  return made;
}

/** What the sheet makes of the schedule: its columns, its rows as text, its problems. */
function evaluated(clipboard: string, more = '') {
  const { name, text } = pasted(clipboard);
  const { session } = cells(`${name} ${text}\n${more}`);
  const errors = session.diagnostics('0').filter(({ severity }) => severity === 'error');
  return { session, errors: errors.map(({ message }) => message) };
}

describe('cells of a spreadsheet as a schedule', () => {
  it('take units from the heading, and leave values, words and conductors what they are', () => {
    const { text, notes } = pasted(
      tabbed(
        'Tag ; Load (kVA) ; Length ; Conductor ; Remark',
        'P1 ; 9.2 ; 85 ft ; 6 AWG Cu THHN ; north wall',
        'P2 ; 1.5 ;  ; 12 AWG Cu ; ',
      ),
    );
    assert.equal(
      text,
      [
        '= schedule',
        '  | tag | load    | length | conductor     | remark       |',
        '  | --- | ---     | ---    | ---           | ---          |',
        '  | P1  | 9.2 kVA | 85 ft  | 6 AWG Cu THHN | "north wall" |',
        '  | P2  | 1.5 kVA |        | 12 AWG Cu     |              |',
      ].join('\n'),
    );
    assert.deepEqual(notes, []);
  });

  it('can be calculated with at once', () => {
    const { session, errors } = evaluated(tabbed('Tag ; Load (kVA)', 'P1 ; 9.2', 'P2 ; 1.5'), 'total = sum(rows.load)');
    assert.deepEqual(errors, []);
    const total = session.results('0').find(({ name }) => name === 'total')?.value;
    assert.ok(total?.kind === 'quantity' && Math.abs(total.base - 10_700) < 1e-9);
  });

  it('never guess whether a comma parts thousands or decimals', () => {
    const { text, notes } = pasted(tabbed('tag ; load (W)', 'P1 ; 1,200', 'P2 ; 900'));
    assert.match(text, /"1,200"/);
    assert.match(notes.join(), /`load` is kept as text because of 1,200/);
  });

  it('get names that the sheet can hold, each once, and none that it uses', () => {
    const made = pasted(tabbed('No. ; no ; 2nd leg ; Length [ft] ; length', '1 ; 2 ; 3 ; 4 ; 5'), 'rows = 3');
    assert.equal(made.name, 'rows_2');
    assert.match(made.text, /\| column_no +\| column_no_2 +\| column_2nd_leg +\| length +\| length_2 +\|/);
    assert.match(made.text, /4 ft/);
  });

  it('say what is missing when there are none, and what is left out', () => {
    const problem = (clipboard: string) => {
      const made = pastedSchedule(cells('x = 1').session, clipboard);
      return 'problem' in made ? made.problem : '';
    };
    assert.match(problem('one word'), /no spreadsheet cells/);
    assert.match(problem('a\tb'), /heading row and the rows below/);
    assert.match(problem(`a\tb\n${'1\t2\n'.repeat(1001)}`), /CSV file/);
    assert.match(pasted('a\tb\n1\t2\t3').notes.join(), /One row has cells beyond the last heading/);
  });

  it('are read without an error, whatever stands in them', () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom('1/2"', 'a|b', '"', 'x "y" z', '// no', '3 A', 'yes', '-4', 'OL', '°'),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 2, maxLength: 5 }), (rows) => {
        const made = pastedSchedule(cells('x = 1').session, rows.map((row) => row.join('\t')).join('\n'));
        if (!('problem' in made)) {
          const { session } = cells(`${made.name} ${made.text}`);
          assert.deepEqual(session.program.tree('0')?.diagnostics, [], made.text);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('are told from statements with tabs in them, which are pasted as they are', () => {
    const { session } = cells('x = 1');
    assert.ok(isSpreadsheet(session, tabbed('Tag ; Load (kVA)', 'P1 ; 9.2')));
    assert.ok(!isSpreadsheet(session, 'a = 3 ft\t// the run\nb = 2 A\t// the load'));
    assert.ok(!isSpreadsheet(session, 'kiln = circuit\n\tload: 16 A\n\tvoltage: 240 V'));
    assert.ok(!isSpreadsheet(session, 'A sentence.'));
  });
});
