import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { askGnuUnits, type FrozenUnits, frozenPath, isComparable } from '../../src/dev/freeze-gnu-units';
import { loadMathjs, namedUnits, parseUnit, toBase, type Unit, unitWords } from '../../src/units';

function unit(text: string): Unit {
  const parsed = parseUnit(text);
  assert.ok(!('problem' in parsed), text);
  return parsed;
}

/** A few roundings of a double, and no more. */
const near = (actual: number, expected: number, what: string) =>
  assert.ok(Math.abs(actual - expected) <= Math.abs(expected) * 2e-15, `${what}: ${actual}, expected ${expected}`);

function compareWithGnu(frozen: FrozenUnits) {
  const symbols = new Set([...unitWords.values()].filter((word) => isComparable(word.unit)).map((word) => word.symbol));
  assert.deepEqual(Object.keys(frozen.factors).sort(), [...symbols].sort());
  for (const [symbol, factor] of Object.entries(frozen.factors)) {
    near(unit(symbol).factor, factor, symbol);
  }
  for (const [scale, points] of Object.entries(frozen.temperatures)) {
    for (const [degrees, kelvins] of Object.entries(points)) {
      near(toBase(Number(degrees), unit(scale)), kelvins, `${degrees} ${scale}`);
    }
  }
}

// Source: GNU Units, whose definitions cite the SI Brochure, NIST SP 811 and the agreements behind them.
describe('units against GNU units', () => {
  it('agrees on every unit and prefix, as recorded', () => {
    compareWithGnu(JSON.parse(readFileSync(frozenPath, 'utf8')));
  });

  let installed = true;
  try {
    execFileSync('units', ['--version']);
  } catch {
    installed = false;
  }
  if (installed) {
    it('agrees on every unit and prefix, asked anew', () => compareWithGnu(askGnuUnits()));
  }
});

// Source: mathjs, a general-purpose mathematics library with a unit table of its own.
describe('units against mathjs', () => {
  const names: Readonly<Record<string, string>> = {
    Ω: 'ohm',
    '°': 'deg',
    h: 'hour',
    d: 'day',
    min: 'minute',
    'Δ°C': 'degC',
    'Δ°F': 'degF',
    gal: 'gallon',
    Btu: 'BTU',
    yd: 'yard',
    mi: 'mile',
    lb: 'lbm',
  };
  /** Not in its table, so nothing to compare with. Temperatures on a scale are compared below. */
  const absent = 'lm lx var VAh varh % ppm rpm kft cmil kcmil cfm gpm fc MBH ton_r USD CAD MXN EUR GBP °C °F'.split(
    ' ',
  );
  /** Its pound per square inch is rounded to twelve digits; its horsepower is the mechanical one of 550 ft·lbf/s. */
  const different: Readonly<Record<string, number>> = { psi: 6894.75729276459, hp: 745.6998715386 };

  it('agrees on every unit that it has, but for two that are named', async () => {
    const mathjs = await loadMathjs();
    for (const named of namedUnits) {
      const name = names[named.symbol] ?? named.symbol;
      if (absent.includes(named.symbol)) {
        assert.ok(!mathjs.Unit.isValuelessUnit(name), `${name} is in mathjs now: compare it`);
        continue;
      }
      // `value` is that of one unit in the coherent SI unit, a scale's zero left out.
      const factor = Number((mathjs.unit(1, name) as unknown as { value: number }).value);
      near(factor, different[named.symbol] ?? named.value, named.symbol);
    }
  });

  it('agrees on temperatures', async () => {
    const mathjs = await loadMathjs();
    for (const [name, symbol] of [
      ['degC', '°C'],
      ['degF', '°F'],
    ]) {
      for (const degrees of [-40, 0, 30, 75, 90, 212]) {
        near(toBase(degrees, unit(symbol)), mathjs.unit(degrees, name).toNumber('K'), `${degrees} ${symbol}`);
      }
    }
  });
});

// Source: NIST SP 811 (2008), appendices B.6, B.8 and B.9; the printed digits are given here from memory.
describe('units against NIST SP 811', () => {
  const printed: readonly (readonly [string, number, number])[] = [
    ['cmil', 5.067075e-10, 7],
    ['ft²', 9.290304e-2, 7],
    ['in²', 6.4516e-4, 5],
    ['mi', 1.609344e3, 7],
    ['lb', 4.535924e-1, 7],
    ['oz', 2.834952e-2, 7],
    ['lbf', 4.448222, 7],
    ['psi', 6.894757e3, 7],
    ['Btu', 1.055056e3, 7],
    ['Btu/h', 2.930711e-1, 7],
    ['ton_r', 3.516853e3, 7],
    ['hp', 746, 7],
    ['gal', 3.785412e-3, 7],
    ['cfm', 4.719474e-4, 7],
    ['fc', 1.076391e1, 7],
    ['Ω·cmil/ft', 1.662426e-9, 7],
    ['Ah', 3600, 7],
    ['kWh', 3.6e6, 7],
    ['°', 1.745329e-2, 7],
    ['rpm', 1.047198e-1 / (2 * Math.PI), 6],
  ];
  for (const [symbol, value, digits] of printed) {
    it(`gives the printed factor of ${symbol}`, () => {
      assert.equal(unit(symbol).factor.toPrecision(digits), value.toPrecision(digits));
    });
  }
});
