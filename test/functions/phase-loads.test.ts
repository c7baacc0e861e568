import assert from 'node:assert/strict';
import { type PhaseLoads, phaseLoads } from '../../src/functions';
import { createProgram, type Value } from '../../src/language';
import { createLibrary } from '../../src/library';

/** The named values of a cell. */
function valuesOf(text: string): ReadonlyMap<string, Value> {
  const library = createLibrary();
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'c', text }]);
  assert.deepEqual(program.diagnostics('c'), []);
  return new Map(program.results('c').flatMap(({ name, value }) => (name && value ? [[name, value] as const] : [])));
}

function loadsOf(columns: string, ...rows: string[]): PhaseLoads | undefined {
  const rule = columns.replace(/[^|]+/g, ' --- ');
  return phaseLoads(valuesOf(`panel = schedule\n  ${[columns, rule, ...rows].join('\n  ')}`).get('panel')!);
}

const sums = (loads: PhaseLoads | undefined) => loads?.phases.map(({ name, base }) => `${name} ${Math.round(base)}`);

describe('the loads of a panel by phase', () => {
  it('come to what the sheet sums itself, and their unbalance to what `unbalance` gives', () => {
    const values = valuesOf(
      [
        'panel = schedule',
        '  | tag | phase | load |',
        '  | --- | --- | --- |',
        ...['1 | A | 1.2 kVA', '2 | B | 0.9 kVA', '3 | C | 1.4 kVA', '4 | B | 1.5 kVA'].map((row) => `  | ${row} |`),
        'on_b = sum(panel.load where panel.phase == "B")',
        'total = sum(panel.load)',
        'spread = unbalance(1.2 kVA / 120 V, on_b / 120 V, 1.4 kVA / 120 V)',
      ].join('\n'),
    );
    const loads = phaseLoads(values.get('panel')!)!;
    const number = (name: string) => {
      const value = values.get(name);
      assert.ok(value?.kind === 'quantity');
      return value.base;
    };
    assert.equal(loads.phases[1].base, number('on_b'));
    assert.ok(Math.abs(loads.phases.reduce((sum, { base }) => sum + base, 0) - number('total')) < 1e-9);
    assert.ok(Math.abs(loads.unbalance! / 100 - number('spread')) < 1e-12);
  });

  it('share a power across several phases equally (common practice, no source)', () => {
    const loads = loadsOf('| phase | load |', '| A | 1 kVA |', '| AB | 2 kVA |', '| ABC | 3 kVA |', '| C | 0.5 kVA |');
    assert.deepEqual(sums(loads), ['A 3000', 'B 2000', 'C 1500']);
    assert.equal(loads?.across, 'shared');
  });

  it('count a current across several phases on each of them (common practice, no source)', () => {
    const loads = loadsOf('| leg | amps |', '| A | 10 A |', '| AB | 20 A |');
    assert.deepEqual([sums(loads), loads?.across, loads?.unbalance], [['A 30', 'B 20'], 'on each', undefined]);
  });

  it('know phases by letter and by number, joined in any of the usual ways', () => {
    for (const both of ['"A-B"', '"b / a"', '"A+B"', '"A,B"']) {
      assert.deepEqual(sums(loadsOf('| phase | load |', '| A | 1 kW |', `| ${both} | 2 kW |`)), ['A 2000', 'B 1000']);
    }
    const loads = loadsOf('| line | load |', '| L1 | 1 kW |', '| "L1-L3" | 2 kW |');
    assert.deepEqual(sums(loads), ['L1 2000', 'L2 0', 'L3 1000']);
  });

  it('take the column called load, else the only one of a power', () => {
    const two = loadsOf('| phase | lights | load |', '| A | 1 kVA | 2 kVA |', '| B | 1 kVA | 3 kVA |');
    assert.deepEqual([two?.loadColumn, sums(two)], ['load', ['A 2000', 'B 3000']]);
    assert.equal(loadsOf('| phase | va |', '| A | 1 kVA |', '| B | 2 kVA |')?.loadColumn, 'va');
    assert.equal(loadsOf('| phase | lights | fans |', '| A | 1 kVA | 2 kVA |', '| B | 1 kVA | 3 kVA |'), undefined);
  });

  it('leave out spares, and count loads on no known phase', () => {
    const loads = loadsOf('| phase | load |', '| A | 1 kW |', '| B | |', '| B | 2 kW |', '| "N" | 4 kW |');
    assert.deepEqual([sums(loads), loads?.unplaced], [['A 1000', 'B 2000'], 1]);
  });

  it('are nothing for a schedule without phases, or with all on one', () => {
    assert.equal(loadsOf('| tag | load |', '| "A" | 1 kW |', '| "B" | 1 kW |'), undefined);
    assert.equal(loadsOf('| phase | load |', '| A | 1 kW |', '| A | 1 kW |'), undefined);
    assert.equal(loadsOf('| phase | load |', '| A | 1 kW |', '| L2 | 1 kW |'), undefined);
    assert.equal(phaseLoads({ kind: 'text', value: 'A' }), undefined);
  });

  it('have a phase with nothing but spares', () => {
    const loads = loadsOf('| phase | load |', '| A | 1 kVA |', '| B | 2 kVA |', '| C | |');
    assert.deepEqual([sums(loads), loads?.unbalance], [['A 1000', 'B 2000', 'C 0'], 100]);
  });

  it('tell whether a load is doubtful, for the sums do not', () => {
    const doubtful = (load: string) => loadsOf('| phase | load |', '| A | 1 kVA |', `| B | ${load} |`)?.doubtful;
    assert.deepEqual([doubtful('2 kVA'), doubtful('2 kVA ± 100 VA')], [false, true]);
  });
});
