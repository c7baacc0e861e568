import assert from 'node:assert/strict';
import { createTables, type Tables } from '../../src/tables';

/** Values typed a second time from the publications named, so that a slip in a file does not pass unseen. */
const tables = createTables({ edition: 'NEC 2023' }) as Tables;

describe('values typed a second time: installations', () => {
  // NEC Chapter 9 Table 9 in reproductions with Ω/kft rows, and a cable maker's reprint from 500 kcmil up.
  it('AC resistance and reactance in conduit', () => {
    const of = (size: string) => {
      const { xOhmPerKft: x, rOhmPerKft: r } = tables.acImpedance(size)!.row;
      return [x.nonmagnetic, x.steel, r.Cu.PVC, r.Cu.aluminum, r.Cu.steel, r.Al.PVC];
    };
    assert.deepEqual(of('14 AWG'), [0.058, 0.073, 3.1, 3.1, 3.1, null]);
    assert.deepEqual(of('4 AWG'), [0.048, 0.06, 0.31, 0.31, 0.31, 0.51]);
    assert.deepEqual(of('3/0 AWG'), [0.042, 0.052, 0.077, 0.082, 0.079, 0.13]);
    assert.deepEqual(of('500 kcmil'), [0.039, 0.048, 0.027, 0.032, 0.029, 0.043]);
  });

  // NEC Chapter 9 Table 4: EMT in a reprint of the 2011 Handbook; RMC in Modern Commercial Wiring (2018).
  it('raceway areas', () => {
    const of = (type: string, size: string) => {
      const { total, overTwoWires, nipple } = tables.raceway(type, size)!.row.areaIn2;
      return [total, overTwoWires, nipple];
    };
    assert.deepEqual(of('EMT', '1/2'), [0.304, 0.122, 0.182]);
    assert.deepEqual(of('EMT', '3/4'), [0.533, 0.213, 0.32]);
    assert.deepEqual(of('EMT', '1'), [0.864, 0.346, 0.519]);
    assert.deepEqual(of('RMC', '1'), [0.887, 0.355, 0.532]);
    assert.deepEqual(of('PVC Sch 40', '1'), [0.832, 0.333, 0.499]); // memory
  });

  // NEC Chapter 9 Table 5, 2008, web reprint.
  it('areas of insulated conductors', () => {
    const of = (type: string, size: string) => tables.insulatedArea(type, size)?.row.areaIn2;
    assert.deepEqual(
      ['14 AWG', '12 AWG', '10 AWG', '8 AWG', '4/0 AWG'].map((size) => of('THHN', size)),
      [0.0097, 0.0133, 0.0211, 0.0366, 0.3237],
    );
    assert.equal(of('THWN-2', '12 AWG'), 0.0133);
    assert.equal(of('XHHW', '1/0 AWG'), 0.1825);
    assert.equal(of('NM-B', '12 AWG'), undefined, 'a cable has no row');
  });

  // NEC Chapter 9 Table 1 and Note 4, reprints of 2011 and 2017.
  it('raceway fill', () => {
    const percent = (count: number, nipple: boolean) => tables.racewayFill(count, nipple)?.row.percent;
    assert.deepEqual([percent(1, false), percent(2, false), percent(3, false), percent(40, false)], [53, 31, 40, 40]);
    assert.deepEqual([percent(1, true), percent(9, true), percent(0, true)], [60, 60, undefined]);
  });

  // NEC Table 250.66; NOM-001-SEDE-2012 Table 250-66.
  it('grounding electrode conductor by the supply conductor', () => {
    const of = (cmil: number, metal: 'Cu' | 'Al') => tables.groundingElectrode(cmil, metal)!.row[metal];
    assert.equal(of(66_360, 'Cu'), '8 AWG', '2 AWG is still in the first row');
    assert.equal(of(70_000, 'Cu'), '6 AWG', 'a parallel total between two rows takes the next');
    assert.equal(of(133_100, 'Cu'), '4 AWG');
    assert.equal(of(350_000, 'Cu'), '2 AWG');
    assert.equal(of(500_000, 'Cu'), '1/0 AWG');
    assert.equal(of(2_000_000, 'Cu'), '3/0 AWG', 'the last row has no upper end');
    assert.equal(of(500_000, 'Al'), '1/0 AWG');
  });

  // NEC 250.28(D) and 250.102(C), code digest: 12.5 % above 1100 kcmil copper.
  it('supply-side bonding jumper', () => {
    assert.equal(tables.supplyBonding(250_000, 'Cu')!.row.Cu, '2 AWG');
    const large = tables.supplyBonding(1_500_000, 'Cu')!.row;
    assert.deepEqual([large.Cu, large.percentOfArea], [null, 12.5]);
  });

  // NEC 2020 Table 310.12(A), distributor's reproduction.
  it('dwelling services, which the 2017 edition has no such table for', () => {
    const of = (rating: number) => [tables.dwellingService(rating)?.row.Cu, tables.dwellingService(rating)?.row.Al];
    assert.deepEqual(of(100), ['4 AWG', '2 AWG']);
    assert.deepEqual(of(200), ['2/0 AWG', '4/0 AWG']);
    assert.deepEqual(of(400), ['400 kcmil', '600 kcmil']);
    assert.equal(tables.dwellingService(401), undefined);
    assert.equal((createTables({ edition: 'NEC 2017' }) as Tables).dwellingService(200), undefined);
  });

  // IEC 60228:2004, Tables 1 to 3, cable makers' pages.
  it('IEC conductor resistance', () => {
    const of = (...key: Parameters<Tables['iecConductor']>) => tables.iecConductor(...key)?.row.maxOhmPerKm;
    assert.equal(of('2.5 mm²', 'Cu', '2'), 7.41);
    assert.equal(of('16 mm²', 'Cu', '2'), 1.15);
    assert.equal(of('2.5 mm²', 'Cu', '5'), 7.98);
    assert.equal(of('50 mm²', 'Al', '2'), 0.641);
    assert.equal(of('2.5 mm²', 'Al', '2'), undefined);
  });

  it('raceways of one type, smallest first', () => {
    const sizes = tables.raceways('EMT').map(({ row }) => row.tradeSize);
    assert.deepEqual(sizes, ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '2-1/2', '3', '3-1/2', '4']);
    assert.deepEqual(tables.raceways('tube'), []);
    assert.ok(tables.racewayTypes().includes('PVC Sch 80'));
  });
});
