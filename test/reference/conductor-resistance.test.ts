import assert from 'node:assert/strict';
import { createTables, type Tables } from '../../src/tables';

const tables = createTables({ edition: 'NEC 2023' }) as Tables;

function near(actual: number, expected: number, fraction: number, what: string): void {
  assert.ok(Math.abs(actual - expected) <= fraction * expected, `${what}: ${actual} against ${expected}`);
}

describe('NEC Chapter 9 Table 8 against physics', () => {
  // Annealed copper wire table (NBS Circular 31, 20 °C) brought to 75 °C by α = 0.00393/°C of IEC 60028.
  // Table 8 is printed to three figures (up to ±0.17 %) from areas rounded to three or four (up to ±0.3 %, 18 AWG), so
  // 0.6 % is what rounding alone may make of it.
  it('solid copper is the annealed-copper wire table at 75 °C', () => {
    for (const size of ['18 AWG', '16 AWG', '14 AWG', '12 AWG', '10 AWG', '8 AWG']) {
      const at20 = tables.wireTable(size)!.row.ohmPerKft;
      const at75 = tables.conductorProperties(size, 'solid')!.row.ohmPerKft.Cu;
      near(at75, at20 * (1 + 0.00393 * 55), 0.006, size);
    }
  });

  // Resistivity × length / area with the International Annealed Copper Standard: 1.7241e-8 Ω·m at 20 °C (IEC 60028).
  // Strands lie in a helix and are about 2 % longer than the conductor (ASTM B8 allows for it by that figure, memory):
  // resistance of a stranded conductor is 1.02 times that of its metal laid straight.
  it('stranded copper is resistivity times length over area, two per cent up for the lay', () => {
    const ohmMetre = 1.7241e-8 * (1 + 0.00393 * 55);
    for (const { text } of tables.sizes) {
      const row = tables.conductorProperties(text, 'stranded')!.row;
      const area = row.areaCmil * 5.067075e-10;
      near(row.ohmPerKft.Cu, (1.02 * ohmMetre * 304.8) / area, 0.01, text);
    }
  });

  // 61 % IACS aluminum, 2.8264e-8 Ω·m at 20 °C, α = 0.00403/°C (IEC-based teaching page; industrial power handbook).
  it('stranded aluminum is resistivity times length over area, two per cent up for the lay', () => {
    const ohmMetre = 2.8264e-8 * (1 + 0.00403 * 55);
    for (const { text } of tables.sizes) {
      const row = tables.conductorProperties(text, 'stranded')!.row;
      near(row.ohmPerKft.Al, (1.02 * ohmMetre * 304.8) / (row.areaCmil * 5.067075e-10), 0.01, text);
    }
  });

  // Common practice, no source: 12 AWG stranded copper is "2 Ω a thousand feet", so 500 ft read about 1 Ω.
  it('500 ft of 12 AWG stranded copper measure about an ohm', () => {
    near(tables.conductorProperties('12 AWG', 'stranded')!.row.ohmPerKft.Cu * 0.5, 1, 0.02, '500 ft');
  });

  // Common practice, no source: every three gauge numbers double the area and halve the resistance.
  it('three gauge numbers halve the resistance', () => {
    for (const [small, large] of [
      ['12 AWG', '9 AWG'],
      ['6 AWG', '3 AWG'],
      ['1 AWG', '3/0 AWG'],
    ]) {
      near(
        tables.wireTable(small)!.row.ohmPerKft / tables.wireTable(large)!.row.ohmPerKft,
        2,
        0.006,
        `${small}, ${large}`,
      );
    }
  });
});

describe('temperature coefficients', () => {
  // The same line told from another point: α(T) = α(20) / (1 + α(20) (T − 20)). IEC 60028 for copper at 20 °C; NEC Chapter
  // 9 Table 8 note for both metals at 75 °C. Printed to three figures.
  it('of Table 8 at 75 °C are those at 20 °C restated', () => {
    const alpha = (metal: 'Cu' | 'Al', at: number) => tables.temperatureCoefficient(metal, at)!.row.alphaPerC!;
    for (const metal of ['Cu', 'Al'] as const) {
      const restated = alpha(metal, 20) / (1 + alpha(metal, 20) * 55);
      assert.ok(Math.abs(alpha(metal, 75) - restated) <= 0.000005, `${metal}: ${restated}`);
    }
    assert.equal(alpha('Cu', 20), 0.00393);
    assert.equal(alpha('Cu', 75), 0.00323);
  });
});
