import assert from 'node:assert/strict';
import { type SessionCell, SheetSession } from '../../src/core';

const calculation = (id: string, text: string): SessionCell => ({ id, kind: 'calculation', text });
const prose = (id: string, text: string): SessionCell => ({ id, kind: 'prose', text });
const front = (code: string) => prose('front', `---\ncode: ${code}\n---`);

const codes = (session: SheetSession, cell: string) =>
  session.diagnostics(cell).map((diagnostic): string => diagnostic.code);

describe('a session', () => {
  it('names the cells that an edit touches, those that hang on it included', () => {
    const session = new SheetSession();
    const cells = [calculation('a', 'I = 5 A'), calculation('b', 'P = I * 2 V'), calculation('c', 'x = 2 * 1 m')];
    assert.deepEqual([...session.update(cells)].sort(), ['a', 'b', 'c']);
    assert.deepEqual([...session.update(cells)], []);
    assert.deepEqual([...session.update([calculation('a', 'I = 6 A'), ...cells.slice(1)])].sort(), ['a', 'b']);
    assert.deepEqual([...session.update(cells.slice(1))].sort(), ['a', 'b']);
  });

  it('keeps what a cell shows until it changes', () => {
    const session = new SheetSession();
    session.update([calculation('a', 'I = 5 A'), calculation('b', 'x = 1 m')]);
    const shown = session.outputs('b');
    session.update([calculation('a', 'I = 6 A'), calculation('b', 'x = 1 m')]);
    assert.equal(session.outputs('b'), shown);
    assert.match(JSON.stringify(session.outputs('a')), /6 A/);
  });

  it('evaluates nothing for an edition without tables, says so at its place, and recovers', () => {
    const session = new SheetSession();
    const cell = calculation('a', 'I = 5 A');
    session.update([front('NEC 1907'), cell]);
    assert.deepEqual(codes(session, 'front'), ['unknown-edition']);
    assert.deepEqual(
      session.outputs('a').map((block) => block.kind),
      ['missing'],
    );
    assert.deepEqual([...session.update([front('NEC 2023'), cell])].sort(), ['a', 'front']);
    assert.deepEqual(codes(session, 'front'), []);
    assert.match(JSON.stringify(session.outputs('a')), /5 A/);
  });

  it('weighs findings as the host wishes', () => {
    const session = new SheetSession();
    const cells = [
      calculation(
        'a',
        'c = circuit\n  load: 22 A\n  voltage: 208 V\n  length: 62 ft\n  continuous: yes\n  kind: general\n  conductor: 12 AWG Cu THHN\n  ocpd: 30 A',
      ),
    ];
    session.update(cells);
    const before = codes(session, 'a');
    assert.ok(before.includes('undersized-conductor'), before.join());
    session.severities = { 'undersized-conductor': 'off' };
    assert.deepEqual([...session.update(cells)], ['a']);
    assert.ok(!codes(session, 'a').includes('undersized-conductor'));
  });

  it('takes the findings of a circuit away when its load loses its value', () => {
    const circuit =
      'k = circuit\n  load: flow\n  voltage: 208 V\n  continuous: yes\n  conductor: 12 AWG Cu THHN\n  ocpd: 25 A';
    const session = new SheetSession();
    session.update([calculation('load', 'flow = 200 A'), calculation('circuit', circuit)]);
    assert.ok(session.diagnostics('circuit').length > 0);
    session.update([calculation('load', 'flow = 200 A + 3 V'), calculation('circuit', circuit)]);
    assert.deepEqual(session.diagnostics('circuit'), []);
    assert.deepEqual(session.results('circuit')[0].calls(), []);
  });
});
