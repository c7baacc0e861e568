import assert from 'node:assert/strict';
import { SheetSession, uncertaintyBudget, why } from '../../src/core';

function programOf(text: string) {
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text }]);
  return session.program;
}

const sheet = `pocket = meter(reading: 0.8 %, digits: 5)
supply = 207.6 V by pocket
rated = 2.3 kW // nameplate
input spare = 10 %
element = 13.2 Ω ± 0.1 Ω
current = supply / element
wire = resistance(12 AWG Cu, 100 ft)
drop = 2 * current * wire * (1 + spare)
lost = current * nothing
again = current + current * 2`;

describe('the chain behind a value', () => {
  it('leads back to what was measured, given, read from a table and assumed', () => {
    const told = why(programOf(sheet), 'drop')!;
    assert.match(told, /^drop = .* V ± .* V, computed as 2 × current × wire × \(1 \+ spare\)\n/);
    for (const line of [
      /├ current = .* A ± .* A, computed as supply ∕? ?\/? ?element/,
      /│ ├ supply = 207\.6 V ± 2\.1 V, measured/,
      /│ │ └ pocket = meter ± \(0\.8 % \+ 5\), as its maker states/,
      /│ └ element = 13\.200 Ω ± 0\.095 Ω, measured/,
      /│ ├ assumed: .*stranded taken/,
      /table: 1\.98 Ω\/kft, NEC \(NFPA 70\) 2023, Chapter 9 Table 8/,
      /└ spare = 10 %, an input of the sheet/,
    ]) {
      assert.match(told, line);
    }
  });

  it('tells a name once, a nameplate as such, and what is missing', () => {
    const program = programOf(sheet);
    assert.equal(why(program, 'rated'), 'rated = 2.3 kW, from the nameplate  // nameplate');
    assert.equal(why(program, 'again')!.match(/supply =/g)?.length, 1);
    assert.match(why(program, 'lost')!, /^lost = no value/);
    assert.equal(why(program, 'unheard'), undefined);
  });

  it('takes a field of a record', () => {
    const program = programOf('h = heater(resistance: 12 Ω, voltage: 240 V, rated_voltage: 240 V)');
    const told = why(program, 'h.current');
    assert.match(told ?? '', /^h\.current = 20 A, computed by heater\n/);
  });

  it('ends for a name that needs itself, and for a long chain', () => {
    assert.match(why(programOf('a = b\nb = a'), 'a')!, /^a = no value/);
    const chain = Array.from({ length: 300 }, (_, i) => `a${i + 1} = a${i} + 1`);
    assert.ok(why(programOf(['a0 = 1', ...chain].join('\n')), 'a300')!.split('\n').length < 60);
  });
});

describe('the uncertainty budget', () => {
  it('has each source with its contribution and share, largest first', () => {
    // V/R of two readings, limits ± 2.0 V on 200 V and ± 0.1 Ω on 10 Ω: relative 1 % each, so equal shares.
    const program = programOf('u = 200 V ± 2 V\nr = 10 Ω ± 0.1 Ω\ni = u / r');
    const table = uncertaintyBudget(program, 'i')!;
    assert.match(table, /200 V ± 2 V +0\.1155 A +50 %/); // 20 A × 1 % / √3
    assert.match(table, /10 Ω ± 0\.1 Ω +0\.1155 A +50 %/);
    assert.match(table, /together: +0\.1633 A/); // × √2
    assert.match(table, /guaranteed limits ± 0\.4 A/);
  });

  it('is not there for a value that is certain', () => {
    assert.equal(uncertaintyBudget(programOf('i = 3 A'), 'i'), undefined);
  });

  it('tells a temperature in degrees of difference', () => {
    assert.match(uncertaintyBudget(programOf('t = 20 °C ± 3 K'), 't')!, /1\.732 °C/);
  });
});
