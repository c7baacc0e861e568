import assert from 'node:assert/strict';
import { createTables, type MotorSupply, type Tables } from '../../src/tables';

/** Values typed a second time from the publications named, so that a slip in a file does not pass unseen. */
const tables = createTables({ edition: 'NEC 2023' }) as Tables;
const tables2017 = createTables({ edition: 'NEC 2017' }) as Tables;

describe('values typed a second time: machines', () => {
  const amperes = (supply: MotorSupply, voltage: number, horsepower: number) =>
    tables.motorCurrent(supply, voltage, horsepower)?.row.amperes;

  // NEC Tables 430.248 (1999 reprint) and 430.250 (2008 reprint), 430.247 in a motor-control textbook.
  it('motor full-load currents', () => {
    assert.deepEqual([amperes('three-phase', 230, 10), amperes('three-phase', 460, 10)], [28, 14]);
    assert.deepEqual([amperes('three-phase', 460, 50), amperes('three-phase', 208, 10)], [65, 30.8]);
    assert.deepEqual([amperes('single-phase', 115, 1), amperes('single-phase', 230, 5)], [16, 28]);
    assert.equal(amperes('dc', 240, 10), 38);
  });

  it('motor ratings are not interpolated, and a sixth of a horsepower is found', () => {
    assert.equal(amperes('single-phase', 115, 1 / 6), 4.4);
    assert.equal(amperes('three-phase', 460, 12), undefined);
    assert.equal(amperes('three-phase', 480, 10), undefined, 'rated voltage, not system voltage');
    assert.deepEqual(tables.motorVoltages('three-phase'), [115, 200, 208, 230, 460, 575, 2300]);
    assert.equal(tables.motorCurrents('single-phase', 115)[0].row.printedHorsepower, '1/6');
  });

  // NEC Table 430.52, 2011 web reprint; 430.32 from memory.
  it('motor circuit percentages', () => {
    const percent = (...key: [string, string, string]) => tables.motorProtection(...key)?.row.percent;
    assert.equal(percent('branch device', 'polyphase', 'inverse-time breaker'), 250);
    assert.equal(percent('branch device', 'polyphase', 'dual-element fuse'), 175);
    assert.equal(percent('branch device', 'design B energy-efficient', 'instantaneous-trip breaker'), 1100);
    assert.equal(percent('overload', 'service factor 1.15 or more', 'overload relay'), 125);
    assert.equal(percent('overload', 'all other', 'overload relay'), 115);
    const source = (edition: Tables) =>
      edition.motorProtection('branch device', 'polyphase', 'inverse-time breaker')!.source.table;
    assert.deepEqual([source(tables2017), source(tables)], ['Table 430.52', 'Table 430.52(C)(1)']);
  });

  // NEC Table 450.3(B), training articles; ANSI/IEEE C57.12 ratings on an engineering page.
  it('transformers', () => {
    const percent = (kind: string, amperes: number) => tables.transformerProtection(kind, amperes)?.row.percent;
    const primary = [9, 8.9, 2, 1.9].map((rated) => percent('primary only', rated));
    assert.deepEqual(primary, [125, 167, 167, 300]);
    assert.equal(percent('primary and secondary: primary', 400), 250);
    assert.equal(percent('primary and secondary: secondary', 400), 125);
    assert.equal(tables.transformerSizeAtLeast('three-phase', 50)?.row.kVA, 75);
    assert.equal(tables.transformerSizeAtLeast('single-phase', 50)?.row.kVA, 50);
    assert.equal(tables.transformerSizeAtLeast('three-phase', 5001), undefined);
    assert.equal(tables.transformerImpedances().length, 16);
  });
});

describe('values typed a second time: loads', () => {
  // NEC Table 220.55 as used in Annex D examples; 26 to 40 ranges 15 kW and 1 kW each (Annex D Example D6).
  it('household ranges', () => {
    const column = (count: number) => tables.rangeDemand(count)!.row;
    assert.deepEqual(
      [1, 8, 10, 14, 24].map((count) => column(count).kilowattsC),
      [8, 23, 25, 29, 39],
    );
    assert.deepEqual([column(30).kilowattsC, column(30).kilowattsEach], [15, 1]);
    assert.deepEqual([column(1).percentA, column(2).percentB, column(3).percentB], [80, 65, 55]);
    assert.equal(tables.rangeDemand(0), undefined);
    assert.equal(tables.rangeDemand(200)!.row.min, 61);
  });

  // NEC Table 220.54 rows on an education page.
  it('household dryers', () => {
    const row = (count: number) => tables.dryerDemand(count)!.row;
    assert.deepEqual([row(9).percent, row(10).percent, row(11).percent], [55, 50, 47]);
    assert.deepEqual([row(15).percent, row(15).lessPerDryer, row(15).beyond], [47, 1, 11]);
  });

  // NEC Table 220.42 tiers, Annex D Example D1(a); Table 220.45 since 2023. Hotels were changed in 2020 (memory).
  it('lighting demand', () => {
    const steps = (of: Tables, occupancy: string) =>
      of.lightingDemand(occupancy).map(({ row }) => [row.toVA, row.percent]);
    assert.deepEqual(steps(tables, 'dwelling'), [
      [3000, 100],
      [120000, 35],
      [null, 25],
    ]);
    assert.deepEqual(steps(tables2017, 'hotel or motel')[0], [20000, 50]);
    assert.deepEqual(steps(tables, 'hotel or motel')[0], [20000, 60]);
    assert.deepEqual(steps(tables, 'hospital'), [[null, 100]], 'no steps of its own since 2020');
    assert.equal(tables.lightingDemand('dwelling')[0].source.table, 'Table 220.45');
  });

  // NEC 2017 Table 220.12, sample rows on an engineering data page; 3 VA/ft² in Annex D Example D1(a).
  it('lighting unit loads', () => {
    const load = (of: Tables, occupancy: string) => of.lightingLoad(occupancy)?.row.voltAmperesPerFt2;
    assert.equal(load(tables, 'dwelling'), 3);
    assert.equal(load(tables2017, 'dwelling'), 3);
    assert.equal(load(tables2017, 'office buildings'), 3.5);
    assert.equal(tables.lightingLoad('office')!.row.continuousIncluded, 'yes');
    assert.equal(tables2017.lightingLoad('office buildings')!.row.continuousIncluded, 'no');
    assert.equal(tables.lightingLoad('office')!.source.basis, 'memory');
  });

  // NEC Annex D Examples D1(a) and D2(a); 220.54.
  it('single figures', () => {
    const value = (rule: string) => tables.loadRule(rule)?.row.value;
    assert.deepEqual([value('small-appliance circuit'), value('laundry circuit'), value('dryer')], [1500, 1500, 5000]);
    assert.deepEqual([value('optional method, over 10 kVA'), value('receptacle yoke')], [40, 180]);
    assert.equal(tables.loadRule('dryer')!.source.table, '220.54');
    assert.equal(value('nothing such'), undefined);
  });
});
