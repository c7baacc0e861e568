import assert from 'node:assert/strict';
import { createTables, type Found, type Tables } from '../../src/tables';

function tablesOf(edition?: string): Tables {
  const tables = createTables(edition === undefined ? {} : { edition });
  assert.ok(!('problem' in tables));
  return tables;
}

const tables = tablesOf();

describe('exact lookups', () => {
  it('find a row by its key and nothing else', () => {
    assert.equal(tables.ampacity('12 AWG')?.row.amperes.Cu[60], 20);
    assert.equal(tables.ampacity('13 AWG'), undefined);
    assert.equal(tables.conductorProperties('12 AWG', 'solid')?.row.ohmPerKft.Cu, 1.93);
    assert.equal(tables.conductorProperties('6 AWG', 'solid'), undefined, 'stranded only from 6 AWG up');
    assert.equal(tables.wireTable('13 AWG')?.row.areaCmil, 5178);
    assert.equal(tables.insulation('thhn')?.row.type, 'THHN');
    assert.equal(tables.insulation('XYZ'), undefined);
    assert.equal(tables.temperatureCoefficient('Al', 75)?.row.alphaPerC, 0.0033);
    assert.equal(tables.temperatureCoefficient('Cu', 50), undefined);
  });

  it('keep an empty cell apart from zero', () => {
    assert.equal(tables.ampacity('14 AWG')?.row.amperes.Al[75], null);
    assert.equal(tables.ambientCorrection(57)?.row.factor[60], null);
  });
});

describe('next larger and next smaller', () => {
  const atLeast = (amperes: number) => tables.standardRatingAtLeast(amperes)?.row.rating;
  const atMost = (amperes: number) => tables.standardRatingAtMost(amperes)?.row.rating;

  it('rating on either side of a current', () => {
    assert.deepEqual([atLeast(21.75), atLeast(25), atLeast(0.5), atLeast(6001)], [25, 25, 10, undefined]);
    assert.deepEqual([atMost(21.75), atMost(25), atMost(9.9)], [20, 25, undefined]);
  });

  it('takes the last bits of a worked-out current as rounding', () => {
    assert.equal(atLeast(25 + 4e-15), 25);
    assert.equal(atMost(25 - 4e-15), 25);
    assert.equal(atLeast(25.001), 30);
  });

  it('leaves ratings of fuses alone out', () => {
    assert.deepEqual([atLeast(5), atLeast(600.5)], [10, 700]);
    assert.ok(!tables.standardRatings.includes(601));
  });

  // 10 A became a standard breaker rating in 2023 (NEC 2023 Table 240.6(A), continuing-education lesson).
  it('knows that 10 A came in 2023', () => {
    assert.equal(tablesOf('NEC 2020').standardRatingAtLeast(9)?.row.rating, 15);
    assert.equal(tables.standardRatingAtLeast(9)?.row.rating, 10);
  });

  it('equipment grounding conductor: first row not below the device', () => {
    assert.equal(tables.equipmentGrounding(60)?.row.Cu, '10 AWG');
    assert.equal(tables.equipmentGrounding(70)?.row.Cu, '8 AWG');
    assert.equal(tables.equipmentGrounding(6001), undefined);
  });
});

describe('ranges', () => {
  const factor = (ambientC: number) => tables.ambientCorrection(ambientC)?.row.factor[75];

  it('of ambient temperature count a fraction of a degree as the next', () => {
    assert.deepEqual([factor(30), factor(30.4), factor(31), factor(35)], [1, 0.94, 0.94, 0.94]);
    assert.equal(factor((86 - 32) / 1.8), 1, '86 °F is 30 °C however it is converted');
    assert.equal(factor(-20), 1.2, 'the first range has no lower end');
    assert.equal(tables.ambientCorrection(85.5), undefined);
  });

  it('of bundled conductors have no upper end', () => {
    const percent = (n: number) => tables.bundling(n)?.row.percent;
    assert.deepEqual(
      [percent(1), percent(3), percent(4), percent(9), percent(41), percent(500)],
      [100, 100, 80, 70, 35, 35],
    );
    assert.equal(percent(0), undefined);
  });

  it('of small conductors hold the metal apart', () => {
    assert.equal(tables.smallConductorLimit('12 AWG', 'Cu')?.row.maxOcpd, 20);
    assert.equal(tables.smallConductorLimit('12 AWG', 'Al')?.row.maxOcpd, 15);
    assert.equal(tables.smallConductorLimit('8 AWG', 'Cu'), undefined);
    assert.match(tables.smallConductorLimit('16 AWG', 'Cu')?.row.condition ?? '', /8 A/);
  });
});

describe('what a row tells of itself', () => {
  const cell = (found: Found<unknown> | undefined, column: string) =>
    found?.shown.find(([label]) => label === column)?.[1];

  it('cells as printed, zeros included', () => {
    const found = tables.conductorProperties('4/0 AWG', 'stranded');
    assert.equal(cell(found, 'Ω/kft, Al, 75 °C'), '0.100');
    assert.equal(cell(found, 'size'), '4/0 AWG');
  });

  it('which cells no reproduction confirmed', () => {
    const found = tables.conductorProperties('10 AWG', 'stranded');
    assert.equal(cell(found, 'Ω/km, uncoated Cu, 75 °C'), '4.070 (from memory)');
    assert.equal(cell(found, 'Ω/kft, uncoated Cu, 75 °C'), '1.24');
    assert.equal(cell(tables.ampacity('1500 kcmil'), 'A, Cu, 60 °C'), '525 (from memory)');
  });

  it('the number that its table carries in each edition', () => {
    const table = (edition: string) => tablesOf(edition).ampacity('8 AWG')?.source.table;
    assert.deepEqual(['NEC 2017', 'NEC 2020', 'NEC 2023'].map(table), [
      'Table 310.15(B)(16)',
      'Table 310.16',
      'Table 310.16',
    ]);
    assert.equal(tablesOf('NEC 2017').ampacity('8 AWG')?.source.edition, '2017');
    assert.equal(tables.wireTable('12 AWG')?.source.edition, 'Circular 31', 'a table of no code keeps its own edition');
  });

  it('whether it was seen in print', () => {
    assert.equal(tables.standardRatingAtLeast(750)?.source.basis, 'memory');
    assert.equal(tables.standardRatingAtLeast(30)?.source.basis, 'published');
    assert.match(tables.ampacity('1250 kcmil')?.source.provenance ?? '', /before 2011/);
  });
});
