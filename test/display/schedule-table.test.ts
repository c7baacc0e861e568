import assert from 'node:assert/strict';
import { toMarkdown, toText } from '../../src/display';
import { SheetSession } from '../../src/session';

function shownBy(...lines: readonly string[]): { text: string; markdown: string } {
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text: lines.join('\n') }]);
  assert.deepEqual(session.program.diagnostics('cell'), []);
  const blocks = session.outputs('cell');
  return { text: toText(blocks), markdown: toMarkdown(blocks) };
}

const stalls = [
  'stalls = schedule',
  '  | tag    | load      | volts | run   |',
  '  | ---    | ---       | ---   | ---   |',
  '  | fryer  | 3.6 kW    | 240 V | 42 ft |',
  '  | urn    | 1440 W    | 120 V | 10 m  |',
  '  | lights | 41.235 W  | 120 V |       |',
  '  amps = load / volts',
];

describe('a schedule as a table', () => {
  it('has units in its heading, numbers below one another and a total where a sum says something', () => {
    const { text } = shownBy(...stalls);
    assert.equal(
      text.split('Worked')[0],
      [
        'stalls',
        '  tag     load (kW)  volts (V)        run (ft)  amps (A)',
        '  ------  ---------  ---------  --------------  --------',
        '  fryer         3.6        240              42        15',
        '  urn          1.44        120           32.81        12',
        '  lights   0.041235        120               –    0.3436',
        '  Total       5.081             74.81 (2 of 3)',
        '',
      ].join('\n'),
    );
  });

  it('works one row out as an example', () => {
    const { text } = shownBy(...stalls);
    assert.match(text, /Worked for row 1 \(fryer\)\n {2}amps = load \/ volts = 3\.6 kW \/ 240 V = 15 A$/);
  });

  it('is a Markdown table with its numbers flush right', () => {
    const { markdown } = shownBy(...stalls);
    assert.match(
      markdown,
      /\| tag \| load \(kW\) \| volts \(V\) \| run \(ft\) \| amps \(A\) \|\n\| --- \| ---: \| ---: \| ---: \| ---: \|\n\| fryer \| 3\.6 \|/,
    );
  });

  it('has no total where a row cannot be used', () => {
    const session = new SheetSession();
    const text = 'p = schedule\n  | tag | load |\n  | a | 3 W |\n  | b | 4 V |\n  | c | 5 W |';
    session.update([{ id: 'cell', kind: 'calculation', text }]);
    assert.match(toText(session.outputs('cell')), /Total +–/);
  });

  it('counts the rows that are too many to show, and totals them all the same', () => {
    const rows = Array.from({ length: 260 }, (_, i) => `  | t${i} | 2 W |`);
    const { text } = shownBy('many = schedule', '  | tag | load |', ...rows);
    assert.match(text, /… 60 more rows\s+…\n\s+Total\s+520/);
  });

  it('is told by its length where there is room for one line only', () => {
    assert.match(shownBy(...stalls, 'same = stalls.tag', 'count(same)').text, /= 3$/);
  });
});
