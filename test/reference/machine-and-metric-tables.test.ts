import assert from 'node:assert/strict';
import { createTables, knownSizes, type Tables } from '../../src/tables';

const tables = createTables({ edition: 'NEC 2023' }) as Tables;

describe('NEC Chapter 9 Table 9 against Table 8', () => {
  // Skin effect only raises resistance (small below 500 kcmil at 60 Hz: handbook knowledge, memory). Table 9 prints two
  // figures, which alone may put it 4.5 % below the direct-current value.
  it('AC resistance in PVC conduit is not below DC resistance but for rounding', () => {
    let compared = 0;
    for (const { text, mm2 } of tables.sizes) {
      const ac = tables.acImpedance(text)?.row.rOhmPerKft.Cu.PVC;
      if (ac) {
        const ratio = ac / tables.conductorProperties(text, 'stranded')!.row.ohmPerKft.Cu;
        assert.ok(ratio > 0.955 && ratio < (mm2 > 260 ? 1.2 : 1.06), `${text}: ${ratio}`);
        compared++;
      }
    }
    assert.equal(compared, 21);
  });
});

describe('IEC 60228 against physics', () => {
  // 1/58 Ω·mm²/m of standard annealed copper at 20 °C (IEC 60028). The limit leaves room above the nominal area's own
  // resistance: 5 % to 8 %, and 12 % at 50 mm², whose metal is nearer 47 mm².
  it('limits of stranded copper lie a little above resistivity over nominal area', () => {
    for (const { text, mm2 } of knownSizes()) {
      const limit = tables.iecConductor(text, 'Cu', '2')?.row.maxOhmPerKm;
      if (limit !== undefined && mm2 <= 300) {
        const ratio = (limit * mm2) / (1000 / 58);
        assert.ok(ratio > 1.03 && ratio < 1.13, `${text}: ${ratio}`);
      }
    }
  });
});

describe('NEC motor currents against power', () => {
  // 1 hp = 745.7 W (550 ft·lbf/s). Efficiency times power factor of a usual three-phase motor of 2 hp and more lies between
  // a half and nine tenths (common practice, no source); the table is on the high side for smaller ones.
  it('give an efficiency times power factor that a motor can have', () => {
    for (const voltage of [230, 460, 575]) {
      for (const { row } of tables.motorCurrents('three-phase', voltage)) {
        const product = (row.horsepower * 745.7) / (Math.sqrt(3) * voltage * row.amperes);
        assert.ok(row.horsepower < 2 || (product > 0.5 && product < 0.95), `${row.horsepower} hp: ${product}`);
      }
    }
  });

  // The same motor at half the voltage draws twice the current: definition of power. Currents are printed with two or
  // three figures.
  it('double from 460 V to 230 V', () => {
    for (const { row } of tables.motorCurrents('three-phase', 460)) {
      const at230 = tables.motorCurrent('three-phase', 230, row.horsepower)?.row.amperes;
      assert.ok(at230 === undefined || Math.abs(at230 / row.amperes - 2) <= 0.05, `${row.horsepower} hp: ${at230}`);
    }
  });
});
