import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parseUnit, type Unit, withPrefix } from '../../src/units';

const shown = (base: number, symbol: string): string => withPrefix(base, parseUnit(symbol) as Unit).symbol;

describe('withPrefix', () => {
  it('takes the prefixes of the trade', () => {
    assert.deepEqual([shown(999, 'W'), shown(1000, 'W'), shown(-9200, 'W'), shown(2e6, 'W')], ['W', 'kW', 'kW', 'MW']);
    assert.deepEqual([shown(1500, 'VA'), shown(1500, 'var'), shown(3.6e6, 'Wh')], ['kVA', 'kvar', 'kWh']);
    assert.deepEqual([shown(0.05, 'Ω'), shown(0.5, 'Ω'), shown(2e3, 'Ω'), shown(2e6, 'Ω')], ['mΩ', 'Ω', 'kΩ', 'MΩ']);
    assert.deepEqual([shown(0.05, 'A'), shown(9999, 'A'), shown(22e3, 'A')], ['mA', 'A', 'kA']);
    assert.deepEqual([shown(0.05, 'V'), shown(7200, 'V'), shown(13800, 'V')], ['mV', 'V', 'kV']);
    assert.deepEqual([shown(22e-6, 'F'), shown(3e-3, 'H')], ['µF', 'mH']);
  });

  it('leaves nothing, what is not finite, and other units alone', () => {
    assert.deepEqual([shown(0, 'W'), shown(Number.NaN, 'W'), shown(Infinity, 'A')], ['W', 'W', 'A']);
    assert.deepEqual([shown(3e5, 'ft'), shown(1e6, 'Ω/kft'), shown(5000, 'kW')], ['ft', 'Ω/kft', 'kW']);
  });

  it('never changes what the quantity is', () => {
    const symbols = fc.constantFrom('W', 'VA', 'var', 'Wh', 'Ω', 'A', 'V', 'F', 'H', 'S', 'Hz', 'ft');
    fc.assert(
      fc.property(symbols, fc.double({ noNaN: true }), (symbol, base) => {
        const unit = parseUnit(symbol) as Unit;
        assert.equal(withPrefix(base, unit).type, unit.type);
      }),
    );
  });
});
