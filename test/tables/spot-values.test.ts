import assert from 'node:assert/strict';
import { createTables, type Tables } from '../../src/tables';

/** Values typed a second time from the publications named, so that a slip in a file does not pass unseen. */
const tables = createTables({ edition: 'NEC 2023' }) as Tables;

describe('values typed a second time', () => {
  // NEC Chapter 9 Table 8, 2017 edition in a commercial-wiring textbook.
  it('conductor resistance, Ω/kft at 75 °C', () => {
    const of = (size: string, stranding: 'solid' | 'stranded') => {
      const { Cu, coatedCu, Al } = tables.conductorProperties(size, stranding)!.row.ohmPerKft;
      return [Cu, coatedCu, Al];
    };
    assert.deepEqual(of('18 AWG', 'solid'), [7.77, 8.08, 12.8]);
    assert.deepEqual(of('12 AWG', 'stranded'), [1.98, 2.05, 3.25]);
    assert.deepEqual(of('10 AWG', 'stranded'), [1.24, 1.29, 2.04]);
    assert.deepEqual(of('8 AWG', 'stranded'), [0.778, 0.809, 1.28]);
    assert.deepEqual(of('6 AWG', 'stranded'), [0.491, 0.51, 0.808]);
    assert.deepEqual(of('2 AWG', 'stranded'), [0.194, 0.201, 0.319]);
    assert.deepEqual(of('1/0 AWG', 'stranded'), [0.122, 0.127, 0.201]);
    assert.deepEqual(of('4/0 AWG', 'stranded'), [0.0608, 0.0626, 0.1]);
    assert.deepEqual(of('500 kcmil', 'stranded'), [0.0258, 0.0265, 0.0424]);
    assert.deepEqual(of('2000 kcmil', 'stranded'), [0.00643, 0.00662, 0.0106]);
  });

  // NEC Table 310.15(B)(16), 2011 to 2017, renumbered 310.16 in 2020; IRC 2018/2021 Table E3705.1.
  it('ampacity, copper and aluminum at 60, 75 and 90 °C', () => {
    const of = (size: string) => {
      const { Cu, Al } = tables.ampacity(size)!.row.amperes;
      return [Cu[60], Cu[75], Cu[90], Al[60], Al[75], Al[90]];
    };
    assert.deepEqual(of('14 AWG'), [15, 20, 25, null, null, null]);
    assert.deepEqual(of('12 AWG'), [20, 25, 30, 15, 20, 25]);
    assert.deepEqual(of('10 AWG'), [30, 35, 40, 25, 30, 35]);
    assert.deepEqual(of('8 AWG'), [40, 50, 55, 35, 40, 45]);
    assert.deepEqual(of('6 AWG'), [55, 65, 75, 40, 50, 55]);
    assert.deepEqual(of('3 AWG'), [85, 100, 115, 65, 75, 85]);
    assert.deepEqual(of('1 AWG'), [110, 130, 145, 85, 100, 115]);
    assert.deepEqual(of('4/0 AWG'), [195, 230, 260, 150, 180, 205]);
    assert.deepEqual(of('500 kcmil'), [320, 380, 430, 260, 310, 350]);
  });

  // NEC Table 250.122, current editions, in an engineering reference.
  it('equipment grounding conductor by device', () => {
    const of = (ocpd: number) => [tables.equipmentGrounding(ocpd)!.row.Cu, tables.equipmentGrounding(ocpd)!.row.Al];
    assert.deepEqual(of(15), ['14 AWG', '12 AWG']);
    assert.deepEqual(of(20), ['12 AWG', '10 AWG']);
    assert.deepEqual(of(100), ['8 AWG', '6 AWG']);
    assert.deepEqual(of(200), ['6 AWG', '4 AWG']);
    assert.deepEqual(of(400), ['3 AWG', '1 AWG']);
    assert.deepEqual(of(800), ['1/0 AWG', '3/0 AWG']);
    assert.deepEqual(of(1200), ['3/0 AWG', '250 kcmil']);
  });

  // NEC 240.4(D) as reproduced by a wire manufacturer.
  it('small-conductor limits', () => {
    const of = (size: string, metal: 'Cu' | 'Al') => tables.smallConductorLimit(size, metal)?.row.maxOcpd;
    assert.deepEqual([of('14 AWG', 'Cu'), of('12 AWG', 'Cu'), of('10 AWG', 'Cu')], [15, 20, 30]);
    assert.deepEqual([of('12 AWG', 'Al'), of('10 AWG', 'Al')], [15, 25]);
  });

  // NEC 240.6(A); 700 A and above from memory.
  it('standard ratings, whole', () => {
    const low = [10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225];
    const high = [250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000];
    assert.deepEqual(tables.standardRatings, [...low, ...high]);
  });

  // Cable makers' data sheets and the column headings of NEC Table 310.15(B)(16).
  it('insulation types: rating and ampacity column, dry and wet', () => {
    const of = (type: string) => {
      const row = tables.insulation(type)!.row;
      return [row.ratingDryC, row.ratingWetC, row.columnDryC, row.columnWetC];
    };
    assert.deepEqual(of('TW'), [60, 60, 60, 60]);
    assert.deepEqual(of('THHN'), [90, null, 90, null]);
    assert.deepEqual(of('THWN-2'), [90, 90, 90, 90]);
    assert.deepEqual(of('XHHW'), [90, 75, 90, 75]);
    assert.deepEqual(of('NM-B'), [90, null, 60, null]);
    assert.deepEqual(of('UF-B'), [90, 60, 60, 60]);
  });
});
