import assert from 'node:assert/strict';
import { createTables, type Tables, type TemperatureColumn } from '../../src/tables';

const tables = createTables({ edition: 'NEC 2023' }) as Tables;

describe('ampacities and their corrections', () => {
  // A conductor's rise over the ambient goes with the square of its current, so at the warm end Ta of each printed range
  // the factor is sqrt((Tc − Ta) / (Tc − 30)): NEC 310.15, equation for other ambients. Two figures are printed; 0.006
  // leaves half a unit and the few cells that are rounded the other way.
  it('ambient factors are the root of the temperature rise left', () => {
    let compared = 0;
    for (let ambient = 10; ambient <= 85; ambient += 5) {
      const factors = tables.ambientCorrection(ambient)!.row.factor;
      for (const conductor of [60, 75, 90] as TemperatureColumn[]) {
        const factor = factors[conductor];
        if (factor === null) {
          assert.ok(ambient > conductor - 5, `${conductor} °C conductor at ${ambient} °C`);
          continue;
        }
        const derived = Math.sqrt((conductor - ambient) / (conductor - 30));
        assert.ok(Math.abs(factor - derived) <= 0.006, `${conductor} °C at ${ambient} °C: ${factor}, ${derived}`);
        compared++;
      }
    }
    assert.equal(compared, 39);
  });

  // The same law between columns: heating I²R with resistance at the column's temperature (234.5 °C + T for copper,
  // IEC 60028) against the rise over 30 °C. The table rounds to 5 A, and small sizes to preferred ratings, so only sizes
  // from 2 AWG up are compared, within 5 %.
  it('hotter columns carry what the hotter conductor may', () => {
    for (const { text, mm2 } of tables.sizes) {
      const { Cu } = tables.ampacity(text)!.row.amperes;
      if (mm2 < 33 || Cu[60] === null || Cu[75] === null) {
        continue;
      }
      const derived = Math.sqrt((45 / 30) * ((234.5 + 60) / (234.5 + 75)));
      assert.ok(Math.abs(Cu[75] / Cu[60] / derived - 1) <= 0.05, `${text}: ${Cu[75] / Cu[60]}, ${derived}`);
    }
  });

  // Aluminum of the same size has 61/100 of copper's conductivity (IEC 60028), so sqrt(0.61) = 0.78 of its ampacity.
  it('aluminum carries about 0.78 of copper', () => {
    for (const { text, mm2 } of tables.sizes) {
      const { Cu, Al } = tables.ampacity(text)!.row.amperes;
      if (mm2 < 33 || mm2 > 260 || Cu[75] === null || Al[75] === null) {
        continue;
      }
      assert.ok(Math.abs(Al[75] / Cu[75] - Math.sqrt(0.61)) <= 0.04, `${text}: ${Al[75] / Cu[75]}`);
    }
  });

  // Common practice, no source: 14, 12 and 10 AWG copper go on 15, 20 and 30 A.
  it('branch-circuit wire goes with its usual breaker', () => {
    const pairs = ['14 AWG', '12 AWG', '10 AWG'].map((size) => [
      tables.ampacity(size)!.row.amperes.Cu[60],
      tables.smallConductorLimit(size, 'Cu')!.row.maxOcpd,
    ]);
    assert.deepEqual(pairs, [
      [15, 15],
      [20, 20],
      [30, 30],
    ]);
  });
});
