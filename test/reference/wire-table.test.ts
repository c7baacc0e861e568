import assert from 'node:assert/strict';
import { createTables, knownSizes, parseSize, type Tables } from '../../src/tables';

const tables = createTables({ edition: 'NEC 2023' }) as Tables;
const gauges = knownSizes().filter(({ text }) => tables.wireTable(text) !== undefined);

function near(actual: number, expected: number, fraction: number, what: string): void {
  assert.ok(Math.abs(actual - expected) <= fraction * expected, `${what}: ${actual} against ${expected}`);
}

describe('the annealed-copper wire table', () => {
  it('holds every gauge from 4/0 to 30', () => {
    assert.equal(gauges.length, 34);
  });

  // ASTM B258: diameters form a geometric progression from 0.4600 in (4/0) to 0.0050 in (36 AWG). Four figures printed.
  it('follows the geometric progression of the gauge', () => {
    for (const { text, mm2 } of gauges) {
      const row = tables.wireTable(text)!.row;
      near(row.areaCmil * 5.067075e-4, mm2, 0.0008, `area of ${text}`);
      near(row.diameterMils, Math.sqrt(mm2 / 5.067075e-4), 0.0006, `diameter of ${text}`);
    }
  });

  // International Annealed Copper Standard, 1/58 Ω·mm²/m at 20 °C (IEC 60028) = 0.017241 Ω·mm²/m.
  it('has the resistance of standard copper', () => {
    for (const { text, mm2 } of gauges) {
      near(tables.wireTable(text)!.row.ohmPerKft, 304.8 / 58 / mm2, 0.0006, text);
    }
  });

  // Density of copper 8.89 g/cm³ (IEC 60028), 453.59237 g to the pound (international agreement of 1959).
  it('has the weight of copper', () => {
    for (const { text, mm2 } of gauges) {
      near(tables.wireTable(text)!.row.poundsPerKft!, (mm2 * 304.8 * 8.89) / 453.59237, 0.0008, text);
    }
  });

  // ASTM B258 rounds diameters to 0.1 mil; the areas of NEC Chapter 9 Table 8 are those diameters squared.
  it('explains the circular mils of NEC Table 8', () => {
    for (const { text } of gauges) {
      const code = tables.conductorProperties(text, 'stranded')?.row;
      const rounded = Number(tables.wireTable(text)!.shown.find(([label]) => label.includes('B258'))![1]);
      if (code) {
        const unit = code.areaCmil < 100_000 ? 10 : 100; // The last place that Table 8 prints.
        assert.equal(code.areaCmil, Math.round(rounded ** 2 / unit) * unit, text);
      }
    }
    assert.equal(tables.conductorProperties('1/0 AWG', 'stranded')!.row.areaCmil, 105600);
    assert.equal(
      Math.round(parseSize('1/0 AWG')!.mm2 / 5.067075e-4 / 100) * 100,
      105500,
      'the exact progression differs',
    );
  });
});
