import assert from 'node:assert/strict';
import { createTables, type Tables } from '../../src/tables';

const tables = createTables() as Tables;

/** Typed a second time from the named source, to catch a slip in the data. */
describe('spot values of tables for kinds of circuits', () => {
  // NEC Table 430.251(B) from memory; 404 A and 363 A stand in published examples.
  it('locked-rotor currents', () => {
    const of = (voltage: number, horsepower: number) => tables.lockedRotorCurrent(voltage, horsepower);
    assert.equal(of(208, 25)?.row.amperes, 404);
    assert.equal(of(208, 25)?.source.basis, 'published');
    assert.equal(of(460, 50)?.row.amperes, 363);
    assert.equal(of(230, 10)?.row.amperes, 162);
    assert.equal(of(230, 10)?.source.basis, 'memory');
    assert.equal(of(460, 26), undefined);
  });

  // NEC Table 400.5(A)(1), columns A and B, from memory; 13 A for a listed 16 AWG set stands in a trade thread.
  it('cords', () => {
    const of = (size: string) => tables.cordAmpacity(size)?.row;
    assert.deepEqual([of('16 AWG')?.threeA, of('16 AWG')?.twoA], [10, 13]);
    assert.deepEqual([of('12 AWG')?.threeA, of('12 AWG')?.twoA], [20, 25]);
    assert.equal(of('1/0 AWG'), undefined);
  });

  // NEC 630.11(A): 20 % and 50 % in trade threads; 630.31(A) from memory.
  it('welders', () => {
    const of = (...key: Parameters<Tables['welderDuty']>) => tables.welderDuty(...key);
    assert.equal(of('arc', 20)?.row.multiplier, 0.45);
    assert.equal(of('arc', 20)?.source.basis, 'published');
    assert.equal(of('arc', 51)?.row.multiplier, 0.78);
    assert.equal(of('resistance', 30)?.source.table, 'Table 630.31(A)');
    assert.equal(of('resistance', 60), undefined);
  });

  // NEC 240.21(B)(1) and (2): one tenth, one third.
  it('taps', () => {
    assert.equal(tables.tapRule(10)?.row.divisor, 10);
    assert.equal(tables.tapRule(25)?.row.divisor, 3);
    assert.equal(tables.tapRule(10.1)?.source.table, '240.21(B)(2)');
    assert.equal(tables.tapRule(25.1), undefined);
  });
});
