import assert from 'node:assert/strict';
import fc from 'fast-check';
import { programOf, shown, valueOf } from '../run-cells';

const values = (lines: string): string => shown(valueOf(lines));

describe('lists are worked on item by item', () => {
  it('does arithmetic with two lists and with a list and one value', () => {
    assert.equal(values('loads = [4 kW, 9 kW]\nloads * 2'), '[8 kW, 18 kW]');
    assert.equal(values('loads = [2.4 kW, 4.8 kW]\nvolts = [120 V, 240 V]\nloads / volts in A'), '[20 A, 20 A]');
    assert.equal(values('-[3 A, 5 A] + 10 A'), '[7 A, 5 A]');
    assert.equal(values('[3 A, 5 A]^2 * (2 Ω) in W'), '[18 W, 50 W]');
  });

  it('compares and joins answers', () => {
    assert.equal(values('[3 A, 5 A] > 4 A'), '[no, yes]');
    assert.equal(values('a = [3 A, 5 A, 7 A]\nnot (a > 4 A and a < 6 A)'), '[yes, no, yes]');
    assert.equal(values('["A", "B"] == "B"'), '[no, yes]');
    assert.equal(values('[10 AWG red, 12 AWG red] == 12 AWG red'), '[no, yes]');
  });

  it('picks with where', () => {
    assert.equal(values('a = [3 A, 5 A, 7 A]\na where a > 4 A'), '[5 A, 7 A]');
    assert.equal(values('a = [3 A, 5 A, 7 A]\nsum(a where ["x", "y", "x"] == "x")'), '10 A');
    assert.equal(values('count(["x", "y", "x"] where ["x", "y", "x"] == "x")'), '2');
  });

  it('adds nothing up to nothing', () => {
    assert.equal(values('a = [3 A, 5 A]\nsum(a where a > 9 A)'), '0 A');
    assert.equal(values('a = [3 A, 5 A]\ncount(a where a > 9 A)'), '0');
  });

  it('tells whether all or any answers are yes', () => {
    assert.equal(values('all([3 A, 5 A] > 4 A)'), 'no');
    assert.equal(values('any([3 A, 5 A] > 4 A)'), 'yes');
    assert.equal(values('all(yes, 3 A > 2 A)'), 'yes');
    assert.equal(values('all([3 A ± 1 A, 5 A] > 2.5 A)'), 'cannot tell');
    assert.equal(values('all([3 A ± 1 A, 1 A] > 2.5 A)'), 'no');
    assert.equal(values('any([3 A ± 1 A, 5 A] > 2.5 A)'), 'yes');
  });

  it('says what keeps all of them from yes or no', () => {
    const value = valueOf('all([3 A ± 1 A, 5 A] > 2.5 A)');
    assert.equal(value.kind === 'boolean' && value.doubt?.dominant, '`3 A ± 1 A`');
  });

  it('goes on working when the list is changed and the code is laid out anew', () => {
    const program = programOf('a = [1 A, 2 A]', 'b = sum(a * 2 where a > 1 A)');
    program.update([
      { id: '0', text: 'a = [1 A, 2 A, 3 A]' },
      { id: '1', text: 'b = sum(a * 2 where a > 1 A)' },
    ]);
    assert.equal(shown(program.results('1')[0].value), '10 A');
  });
});

describe('bundles', () => {
  it('are so many of one thing', () => {
    assert.equal(values('3 * (10 AWG red)'), '[10 AWG red, 10 AWG red, 10 AWG red]');
    assert.equal(values('n = 2\nn * 10 AWG red + 12 AWG red'), '[10 AWG red, 10 AWG red, 12 AWG red]');
    assert.equal(values('count([2 * (10 AWG red), 12 AWG red])'), '3');
  });
});

describe('doubt in lists', () => {
  it('goes through each item and through functions over all of them', () => {
    // Three independent sources of like size: their squares add (JCGM 100, 5.1.2).
    const sum = valueOf('sum([3 A ± 0.3 A, 4 A ± 0.4 A, 5 A ± 1.2 A] * 2)');
    assert.ok(sum.kind === 'quantity');
    assert.ok(Math.abs(sum.uncertainty!.standard - (2 * 1.3) / Math.sqrt(3)) < 1e-12);
  });

  it('is nothing for what is subtracted from itself', () => {
    const value = valueOf('a = [3 A ± 0.3 A, 4 A ± 0.4 A]\nsum(a - a)');
    assert.ok(value.kind === 'quantity');
    assert.equal(value.uncertainty, undefined);
  });

  it('equals that of the same sum written out', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 50 })), {
          minLength: 1,
          maxLength: 8,
        }),
        (readings) => {
          const items = readings.map(([value, limits]) => `${value / 10} A ± ${limits / 10} A`);
          for (const [name, spelled] of [
            ['sum', items.map((item) => `(${item})`).join(' + ')],
            ['mean', `(${items.map((item) => `(${item})`).join(' + ')}) / ${items.length}`],
          ]) {
            const list = valueOf(`${name}([${items.join(', ')}])`);
            const written = valueOf(spelled);
            assert.ok(list.kind === 'quantity' && written.kind === 'quantity');
            assert.ok(Math.abs(list.base - written.base) <= 1e-12 * written.base);
            assert.ok(Math.abs(list.uncertainty!.standard / written.uncertainty!.standard - 1) < 1e-12);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
