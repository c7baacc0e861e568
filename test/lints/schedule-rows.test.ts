import assert from 'node:assert/strict';
import { type FolderFiles, SheetSession } from '../../src/session';
import { applyEdits } from '../../src/text';

const head = [
  'panel = schedule',
  '  | tag | load | voltage | length | conductor      | ocpd | continuous | kind    |',
  '  | --- | ---  | ---     | ---    | ---            | ---  | ---        | ---     |',
];

function sessionOf(text: string, rows?: string): SheetSession {
  const files: FolderFiles = {
    path: 'sheet.kft.md',
    read: () => (rows === undefined ? { problem: 'is not there.' } : bytes),
    tableFiles: () => [],
  };
  const bytes = new TextEncoder().encode(rows ?? '');
  const session = new SheetSession({ files });
  session.update([{ id: 'cell', kind: 'calculation', text }]);
  return session;
}

/** Each finding with the text that it stands at. */
function found(text: string): string[] {
  const session = sessionOf(text);
  return session.diagnostics('cell').map(({ code, span }) => `${code} at ${text.slice(span.start, span.end)}`);
}

/** The same findings for a call of `circuit` with these arguments, with the message of each. */
const messages = (text: string, rows?: string): string[] =>
  sessionOf(text, rows)
    .diagnostics('cell')
    .map(({ code, message }) => `${code}: ${message.replace(/^"[^"]*", line \d+, column \d+: /, '')}`)
    .sort();

const circuits: readonly string[] = [
  '18 A, 120 V, 40 ft, 12 AWG Cu THHN, 20 A, yes, general',
  '16 A, 120 V, 40 ft, 12 AWG Cu THHN, 20 A, yes, general',
  '12 A, 120 V, 200 ft, 12 AWG Cu THHN, 20 A, no, general',
  '24 A, 240 V, 40 ft, 10 AWG Cu THHN, 40 A, no, general',
  '24 A, 240 V, 40 ft, 10 AWG Cu THHN, 40 A, no, motor',
  '9.6 kW, 240 V, 40 ft, 8 AWG Cu THHN, 50 A, yes, water_heater',
  '50 A, 240 V, 30 ft, 10 AWG Cu THHN, 20 A, no, general',
];
const fields = ['load', 'voltage', 'length', 'conductor', 'ocpd', 'continuous', 'kind'];

describe('rows of a schedule of circuits', () => {
  it('are known by headings with capitals, too', () => {
    const small =
      'p = schedule\n  | tag | load | voltage | conductor | ocpd |\n  | a | 30 A | 240 V | 14 AWG Cu THHN | 40 A |';
    const large = small.replace('load', 'Load').replace('conductor', 'Conductor').replace('ocpd', 'OCPD');
    assert.ok(messages(small).some((message) => message.startsWith('undersized-conductor')));
    assert.deepEqual(messages(large), messages(small));
  });

  it('have the findings that the same circuits have on lines of their own', () => {
    for (const circuit of circuits) {
      const cells = circuit.split(', ');
      const call = `one = circuit(${cells.map((cell, i) => `${fields[i]}: ${cell}`).join(', ')})`;
      const row = `panel = schedule\n  | tag | ${fields.join(' | ')} |\n  | P1 | ${cells.join(' | ')} |`;
      const formula = `${row.replace('load', 'amps')}\n  carries = circuit(load: amps, ${fields
        .slice(1)
        .map((field) => `${field}: ${field}`)
        .join(', ')}).ampacity`;
      const expected = messages(call);
      assert.deepEqual(messages(row), expected, circuit);
      assert.deepEqual(messages(formula), expected, circuit);
      assert.deepEqual(
        messages('panel = schedule "rows.csv"', `tag,${fields.join(',')}\nP1,${cells.join(',')}\n`),
        expected,
      );
    }
  });

  it('have them at the cells that they are about', () => {
    assert.deepEqual(
      found(
        [
          ...head,
          '  | P1  | 18 A | 120 V   | 40 ft  | 12 AWG Cu THHN | 20 A | yes        | general |',
          '  | P2  | 12 A | 120 V   | 40 ft  | 12 AWG Cu THHN | 20 A | no         | general |',
        ].join('\n'),
      ),
      ['undersized-conductor at 12 AWG Cu THHN', 'continuous-load at 20 A'],
    );
  });

  it('have them in each of several rows that are alike, and in those alone', () => {
    const row = (tag: string, load: string) =>
      `  | ${tag} | ${load} | 120 V   | 40 ft  | 12 AWG Cu THHN | 20 A | yes        | general |`;
    const text = [...head, row('P1', '18 A'), row('P2', '16 A'), row('P3', '18 A'), row('P4', '18.0 A')].join('\n');
    const places = sessionOf(text)
      .diagnostics('cell')
      .filter(({ code }) => code === 'continuous-load')
      .map(({ span }) => text.slice(0, span.start).split('\n').length);
    assert.deepEqual(places, [4, 6, 7]);
  });

  it('offer fixes that change the cell', () => {
    const text = [...head, '  | P1  | 24 A | 240 V   | 40 ft  | 10 AWG Cu THHN | 40 A | no         | general |'].join(
      '\n',
    );
    const [finding] = sessionOf(text).diagnostics('cell');
    assert.match(applyEdits(text, finding.fixes![0].edits), /10 AWG Cu THHN \| 30 A \| no/);
    assert.match(applyEdits(text, finding.fixes![1].edits), /8 AWG Cu THHN \| 40 A \| no/);
  });

  it('stand at the name of the file where the rows do, with line and column, and without fixes', () => {
    const rows =
      'tag,load,voltage,conductor,ocpd,continuous,kind\nP1,12 A,120 V,12 AWG Cu THHN,20 A,no,general\nP2,18 A,120 V,12 AWG Cu THHN,20 A,yes,general\n';
    const diagnostics = sessionOf('panel = schedule "rows.csv"', rows).diagnostics('cell');
    assert.equal(diagnostics.length, 2);
    assert.match(diagnostics[0].message, /^"rows.csv", line 3, column 15: 18 A × 125 %/);
    assert.ok(diagnostics.every(({ fixes, span }) => !fixes && span.start === 17));
  });

  it('can be allowed for the whole schedule', () => {
    const row = '  | P1  | 12 A | 120 V   | 200 ft | 12 AWG Cu THHN | 20 A | no         | general |';
    assert.deepEqual(found([...head, row].join('\n')), ['voltage-drop at 12 AWG Cu THHN']);
    assert.deepEqual(found(['allow voltage-drop "lamps only"', ...head, row].join('\n')), []);
  });

  it('say nothing of tables that are laid out otherwise, of rows that lack what is needed, and of words of their own', () => {
    const silent = [
      'a = schedule\n  | tag | load | voltage |\n  | P1 | 90 A | 120 V |',
      'a = schedule\n  | tag | conductor | ocpd |\n  | P1 | 14 AWG Cu THHN | 60 A |',
      'a = schedule\n  | tag | load | voltage | conductor | ocpd |\n  | P1 |  | 120 V | 14 AWG Cu THHN | 15 A |',
      'a = schedule\n  | tag | load | voltage | conductor | ocpd | kind |\n  | P1 | 12 A | 120 V | 12 AWG Cu THHN | 20 A | lighting |',
      'a = schedule\n  | tag | load | conductor |\n  | P1 | heavy | 12 AWG Cu THHN |\n  | P2 | light | 12 AWG Cu THHN |',
    ];
    for (const text of silent) {
      assert.deepEqual(found(text), [], text);
    }
  });

  it('ask nothing about a device or a conductor that the table does not name', () => {
    const rows = 'p = schedule\n  | tag | load | voltage | conductor |\n  | P1 | 12.5 A | 120 V | 12 AWG Cu THHN |';
    assert.deepEqual(found(rows), []);
    const tight = rows.replace('12.5 A', '18 A');
    assert.deepEqual(found(tight), ['continuous-load at 18 A']);
    assert.match(sessionOf(tight).diagnostics('cell')[0].message, /Say so in a column `continuous`/);
  });

  it('are judged once where a formula calls circuit itself', () => {
    const row = '  | P1  | 18 A | 120 V   | 40 ft  | 12 AWG Cu THHN | 20 A | yes        | general |';
    const formula =
      '  drop = circuit(load: load, voltage: voltage, length: length, conductor: conductor, ocpd: ocpd, continuous: continuous, kind: kind).drop';
    assert.deepEqual(found([...head, row, formula].join('\n')), [
      'undersized-conductor at 12 AWG Cu THHN',
      'continuous-load at 20 A',
    ]);
  });
});
