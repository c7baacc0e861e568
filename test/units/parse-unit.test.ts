import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  dimensionOf,
  fromBase,
  namedUnits,
  parseUnit,
  quantityType,
  temperatureDifference,
  toBase,
  type Unit,
  unitFor,
  unitWords,
} from '../../src/units';

function unit(text: string): Unit {
  const parsed = parseUnit(text);
  assert.ok(!('problem' in parsed), `${text} should be a unit`);
  return parsed;
}

describe('parseUnit', () => {
  it('keeps the definitions exact', () => {
    assert.equal(unit('ft').factor, 0.3048);
    assert.equal(unit('in').factor, 0.0254);
    assert.equal(unit('kft').factor, 304.8);
    assert.equal(unit('mi').factor, 5280 * 0.3048);
    assert.equal(unit('kg').factor, 1);
    assert.equal(unit('mm²').factor, 1e-6);
    assert.equal(unit('in²').factor, 0.0254 * 0.0254);
    assert.equal(unit('Ω/km').factor, 1e-3);
    assert.equal(unit('Ω/kft').factor, 1 / 304.8);
    assert.equal(unit('hp').factor, 746);
    assert.equal(unit('mA').factor, 1e-3);
    assert.equal(unit('MΩ').factor, 1e6);
    assert.equal(unit('kWh').factor, 3.6e6);
  });

  it('makes a circular mil π/4 of a square mil, and a kcmil a thousand of them', () => {
    assert.equal(unit('cmil').factor, (Math.PI / 4) * unit('mil').factor * unit('mil').factor);
    assert.ok(Math.abs(unit('kcmil').factor / unit('cmil').factor - 1000) < 1e-12);
  });

  it('reads ASCII and look-alike spellings as the same unit', () => {
    const same: readonly string[][] = [
      ['Ω', 'ohm', 'Ohm', '\u2126'],
      ['µA', 'uA', '\u03bcA'],
      ['kΩ', 'kohm', 'kOhm', 'k\u2126'],
      ['MΩ', 'Mohm', 'MOhm'],
      ['mm²', 'mm2', 'mm^2'],
      ['ft²', 'ft2', 'ft^2'],
      ['ft³', 'ft3', 'ft^3'],
      ['kcmil', 'MCM'],
      ['°C', 'degC', '\u2103'],
      ['°F', 'degF', '\u2109'],
      ['Δ°F', 'deltadegF'],
      ['°', 'deg'],
      ['Ω/kft', 'ohm/kft'],
      ['Ω·cmil/ft', 'ohm⋅cmil/ft'],
      ['J/(kg·K)', 'J/kg/K'],
      ['s⁻¹', 's^-1'],
    ];
    for (const [symbol, ...others] of same) {
      assert.equal(unit(symbol).symbol, symbol);
      for (const other of others) {
        assert.equal(unit(other), unit(symbol), other);
      }
    }
  });

  it('tells power kinds, absolute temperatures and differences apart', () => {
    const kind = (text: string) => unit(text).type.kind;
    assert.deepEqual(['W', 'kW', 'hp', 'ton_r'].map(kind), ['real', 'real', 'real', 'real']);
    assert.deepEqual(['VA', 'kVA', 'V·A', 'kV·A'].map(kind), ['apparent', 'apparent', 'apparent', 'apparent']);
    assert.deepEqual(['var', 'kvar', 'Mvar'].map(kind), ['reactive', 'reactive', 'reactive']);
    assert.deepEqual(['kWh', 'J/s', 'W/ft²', 'Btu/h'].map(kind), ['plain', 'plain', 'plain', 'plain']);
    assert.deepEqual(['°C', '°F'].map(kind), ['absolute', 'absolute']);
    assert.equal(unit('K').type, temperatureDifference);
    assert.equal(unit('Δ°F').type, temperatureDifference);
    assert.equal(unit('1/°C').type, quantityType(dimensionOf({ temperature: -1 })));
    assert.equal(unit('Ω/°F').offset, 0);
  });

  it('keeps currencies apart', () => {
    assert.notEqual(unit('USD').type, unit('EUR').type);
    assert.equal(unit('USD/ft').type.dimension, dimensionOf({ USD: 1, length: -1 }));
  });

  it('gives the unit of a plain number for no text', () => {
    assert.deepEqual([unit('').symbol, unit('').factor], ['', 1]);
  });

  const meant: readonly (readonly [string, string | undefined])[] = [
    ['Kw', 'kW'],
    ['KW', 'kW'],
    ['KVA', 'kVA'],
    ['kVAR', 'kvar'],
    ['hz', 'Hz'],
    ['volts', 'V'],
    ['Volt', 'V'],
    ['amp', 'A'],
    ['amps', 'A'],
    ['ohms', 'Ω'],
    ['watts', 'W'],
    ['feet', 'ft'],
    ['inches', 'in'],
    ['FT', 'ft'],
    ['percent', '%'],
    ['sqft', 'ft²'],
    ['W/sqft', 'W/ft²'],
    ['kV A', 'kV·A'],
    ['kW * h', 'kW·h'],
    ['ohms / kft', 'Ω/kft'],
    ['volts per metre', 'V/m'],
    ['ft-lb', 'ft·lbf'],
    ['btu/hr', 'Btu/h'],
    ['ton', 'ton_r'],
    ['°c', '°C'],
    ['degf', '°F'],
    ['hours', 'h'],
    ['bananas', undefined],
    ['constructor', undefined],
    ['/', undefined],
  ];
  for (const [text, suggestion] of meant) {
    it(`says what ${text} was meant to be`, () => {
      const parsed = parseUnit(text);
      assert.ok('problem' in parsed);
      assert.equal(parsed.suggestion, suggestion);
      assert.match(parsed.problem, /is not a unit/);
    });
  }

  it('refuses a unit beyond what a float holds', () => {
    const parsed = parseUnit('TΩ^9·TΩ^9·TΩ^9·TΩ^9');
    assert.ok('problem' in parsed);
    assert.match(parsed.problem, /too large/);
  });

  it('never throws, whatever the text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => void parseUnit(text)));
    const parts = fc.constantFrom('V', 'k', '/', '·', '^', '2', '(', ')', '²', '°', 'C', '1/', ' ', '⁻', 's', '*');
    fc.assert(fc.property(fc.array(parts), (text) => void parseUnit(text.join(''))));
  });
});

const anyWord = fc.constantFrom(...unitWords.keys());
const anyUnit = fc
  .array(fc.tuple(anyWord, fc.constantFrom('', '²', '^3', '⁻¹')), { minLength: 1, maxLength: 3 })
  .chain((terms) =>
    fc
      .array(fc.constantFrom('·', '/'), { minLength: terms.length - 1, maxLength: terms.length - 1 })
      .map((joints) => terms.map(([word, power], i) => word + power + (joints[i] ?? '')).join('')),
  );

describe('units, whatever they are', () => {
  it('print as text that reads back as the same unit', () => {
    fc.assert(
      fc.property(anyUnit, (text) => {
        const parsed = parseUnit(text);
        assert.ok('problem' in parsed || parseUnit(parsed.symbol) === parsed);
      }),
    );
  });

  it('convert there and back', () => {
    fc.assert(
      fc.property(anyWord, fc.double({ min: 1e-200, max: 1e6, noNaN: true }), (text, value) => {
        const there = unit(text);
        const back = fromBase(toBase(value, there), there);
        // A scale's zero costs digits of small values: the loss is that of the zero's own last digit.
        const slack = Math.abs(value) * 4e-16 + Math.abs(there.offset / there.factor) * 4e-16;
        assert.ok(Math.abs(back - value) <= slack, `${value} ${text} came back as ${back}`);
      }),
    );
  });

  it('have one meaning for each word', () => {
    const spellings = namedUnits.flatMap((named) => [named.symbol, ...(named.also ?? [])]);
    assert.equal(new Set(spellings).size, spellings.length);
    for (const named of namedUnits) {
      for (const word of [named.symbol, ...(named.also ?? [])]) {
        assert.equal(unitWords.get(word)?.unit, named, `${word} is taken by a prefixed unit`);
      }
    }
    // What a prefix and a unit make must not be another unit's word.
    const made = namedUnits.flatMap((named) => [...(named.prefixes ?? '')].map((prefix) => prefix + named.symbol));
    const all = [...namedUnits.map((named) => named.symbol), ...made];
    assert.deepEqual(
      all.filter((word, i) => all.indexOf(word) !== i),
      [],
    );
  });
});

describe('unitFor', () => {
  const of = (text: string, system: 'US' | 'SI') => unitFor(unit(text).type, system).symbol;

  it('gives the unit of the trade in each system', () => {
    const both = ['V', 'A', 'Ω', 'W', 'VA', 'var', 'Hz', 'Wh', 's', '°C', 'K', '', 'F', 'H', 'USD', 'A²·s', '1/°C'];
    for (const symbol of both) {
      assert.equal(of(symbol, 'US'), symbol);
      assert.equal(of(symbol, 'SI'), symbol);
    }
    assert.deepEqual([of('m', 'US'), of('ft', 'SI')], ['ft', 'm']);
    assert.deepEqual([of('Ω/km', 'US'), of('Ω/kft', 'SI')], ['Ω/kft', 'Ω/km']);
    assert.deepEqual([of('kcmil', 'US'), of('kcmil', 'SI')], ['ft²', 'm²']);
    assert.deepEqual([of('USD/m', 'US'), of('USD/ft', 'SI')], ['USD/ft', 'USD/m']);
    assert.deepEqual([of('kg', 'US'), of('Pa', 'US')], ['lb', 'psi']);
    assert.equal(of('J/s', 'US'), 'W');
  });

  it('composes from an electrical unit and the bases where none has a name', () => {
    assert.equal(of('V²', 'SI'), 'V²');
    assert.equal(of('V^(1/2)', 'SI'), 'V^(1/2)');
    assert.equal(of('kg/m³', 'US'), 'lb/ft³');
    assert.equal(of('V/°C', 'SI'), 'V/K');
  });

  it('gives text that reads back as a unit of the same type, for any dimension', () => {
    const exponent = fc.constantFrom(-3, -2, -1, 0, 1, 2, 3);
    const dimension = fc.record({ length: exponent, mass: exponent, time: exponent, current: exponent, USD: exponent });
    fc.assert(
      fc.property(dimension, fc.constantFrom('US' as const, 'SI' as const), (powers, system) => {
        const type = quantityType(dimensionOf(powers));
        const shown = unitFor(type, system);
        assert.equal(shown.type.dimension, type.dimension);
        const back = unit(shown.symbol);
        assert.equal(back.type.dimension, type.dimension);
        assert.equal(back.factor, shown.factor);
      }),
    );
  });
});
