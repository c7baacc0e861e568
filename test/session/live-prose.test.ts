import assert from 'node:assert/strict';
import { evaluateSheet, type SessionCell, SheetSession } from '../../src/core';

const cells = (prose: string, code = 'u = 207.6 V ± 2 V\ni = u / (10 Ω)\nlost = nothing * 2'): SessionCell[] => [
  { id: 'head', kind: 'prose', text: '# Title' },
  { id: 'code', kind: 'calculation', text: code },
  { id: 'prose', kind: 'prose', text: prose },
];

function session(prose: string): SheetSession {
  const made = new SheetSession();
  made.update(cells(prose));
  return made;
}

describe('live prose', () => {
  it('shows values in place of code spans that begin with an equals sign, and of no others', () => {
    const made = session('The load draws `= i in mA`; ``= u`` stays `u` and `== x`? No: `code`.');
    assert.equal(made.shownProse('prose').slice(0, 54), 'The load draws 20,760 mA ± 190 mA; 207.6 V ± 1.9 V sta');
    assert.match(made.shownProse('prose'), /stays `u`.*`code`\./);
    assert.deepEqual(
      made
        .liveValues('prose')
        .map(({ expression }) => expression)
        .slice(0, 2),
      ['i in mA', 'u'],
    );
  });

  it('follows the calculation, and says that the prose cell has changed', () => {
    const made = session('It draws `= i`.');
    assert.deepEqual([...made.update(cells('It draws `= i`.', 'i = 3 A'))].sort(), ['code', 'prose']);
    assert.equal(made.shownProse('prose'), 'It draws 3 A.');
  });

  for (const [what, prose, code, at] of [
    ['an unknown name', 'It draws `= j`.', 'unknown-name', 'j'],
    ['a unit that does not fit', 'It draws `= i in V`.', 'wrong-conversion', 'i in V'],
    ['an unclosed bracket', 'It draws `= (i`, then `= i`.', 'unclosed-bracket', '('],
    ['a definition, which prose never makes', 'It draws `= k = 3`.', 'equals-for-comparison', '='],
    ['a value that is missing for an error elsewhere', 'It draws `= lost`.', 'live-value-missing', ' lost'],
    ['one in the first cell', '', 'unknown-name', 'first'],
  ] as const) {
    it(`reports ${what} at its place, and keeps the code`, () => {
      const made = new SheetSession();
      const first = '# Title of `= first`';
      made.update(prose === '' ? [{ id: 'prose', kind: 'prose', text: first }] : cells(prose));
      const found = made.diagnostics('prose').filter((problem) => problem.code === code);
      assert.equal(found.length, 1, JSON.stringify(made.diagnostics('prose')));
      assert.ok((prose || first).slice(found[0].span.start).startsWith(at), JSON.stringify(found));
      assert.match(made.shownProse('prose'), /`= ?.*` \(no value\)/);
      assert.equal(made.program.names().has('k'), false);
    });
  }

  it('tells on hover what it shows and what it is made of', () => {
    const prose = 'It draws `= i in mA`, not `= k`.';
    const made = session(prose);
    const at = (part: string) => made.proseHover('prose', prose.indexOf(part));
    const hover = at('i in');
    assert.equal(prose.slice(hover?.span.start, hover?.span.end), '`= i in mA`');
    assert.match(hover?.markdown ?? '', /^Shows 20,760 mA ± 190 mA\.\n\n---\n\n(.|\n)*20\.76 A/);
    assert.match(at('= i')?.markdown ?? '', /^Shows 20,760 mA ± 190 mA\./);
    assert.equal(at('k')?.markdown, 'This shows no value.');
    assert.equal(at('It'), undefined);
  });

  it('counts as no use of a name for renaming, which has its own way into prose', () => {
    const made = session('`= u`');
    assert.equal(
      made.program
        .names()
        .get('u')
        ?.references.every(({ cell }) => cell === 'code'),
      true,
    );
  });

  it('has its problems with lines of the file, and its text in the evaluation', () => {
    const evaluation = evaluateSheet('```kft\ni = 3 A\n```\n\nDraws `= i` and\n`= x`.\n');
    assert.deepEqual(
      evaluation.diagnostics.map(({ code, line, column }) => [code, line, column]),
      [['unknown-name', 6, 4]],
    );
    assert.equal(evaluation.cells[1].prose?.markdown, 'Draws 3 A and\n`= x` (no value).');
    assert.equal(evaluation.ok, false);
  });
});
