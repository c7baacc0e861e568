import { type Base, bases, type Dimension, dimensionless, divideDimensions, raiseDimension } from './dimension';
import { exponentSymbol, parseUnit } from './parse-unit';
import { type QuantityType, quantityType } from './quantity-type';
import type { Unit } from './unit';

/** Which units derived lengths, areas and masses are shown in. */
export type UnitSystem = 'US' | 'SI';

const cache = { US: new Map<QuantityType, Unit>(), SI: new Map<QuantityType, Unit>() };

/**
 * The unit that a computed quantity is shown in when nobody chose one. Areas are those of floors (ft², m²), since
 * conductor areas come with their unit; temperatures are in °C in both systems, as in the ampacity tables.
 */
export function unitFor(type: QuantityType, system: UnitSystem): Unit {
  let unit = cache[system].get(type);
  if (!unit) {
    unit = namedFor(system).get(type) ?? composed(type, system);
    cache[system].set(type, unit);
  }
  return unit;
}

/** Units by which computed quantities are shown, in both systems. */
const common =
  'V A Ω S W VA var Wh Ah F H T Wb Hz s N °C K lm USD CAD MXN EUR GBP USD/kWh CAD/kWh MXN/kWh EUR/kWh GBP/kWh A²·s 1/°C';

const own: Readonly<Record<UnitSystem, string>> = {
  US: 'ft ft² ft³ lb Ω/kft Ω·cmil/ft S·ft/cmil W/ft² V/ft A/in² psi ft/s ft/min cfm fc lb/ft USD/ft CAD/ft MXN/ft EUR/ft GBP/ft',
  SI: 'm m² m³ kg Ω/km Ω·mm²/m W/m² V/m A/mm² Pa m/s m³/s lx kg/m USD/m CAD/m MXN/m EUR/m GBP/m',
};

const named: Partial<Record<UnitSystem, ReadonlyMap<QuantityType, Unit>>> = {};

function namedFor(system: UnitSystem): ReadonlyMap<QuantityType, Unit> {
  const ready = named[system];
  if (ready) {
    return ready;
  }
  const map = new Map<QuantityType, Unit>([[quantityType(dimensionless), known('')]]);
  for (const symbol of `${own[system]} ${common}`.split(' ')) {
    const unit = known(symbol);
    if (!map.has(unit.type)) {
      map.set(unit.type, unit);
    }
  }
  // Power whose kind nobody stated is shown in watts.
  map.set(quantityType(known('W').type.dimension), known('W'));
  named[system] = map;
  return map;
}

function known(symbol: string): Unit {
  const unit = parseUnit(symbol);
  if ('problem' in unit) {
    throw new Error(`${unit.problem} The list of display units is wrong.`);
  }
  return unit;
}

/** Symbols of the bases, by system, for quantities that no named unit fits. */
const baseSymbols: Readonly<Record<Base, string>> = {
  length: 'm',
  mass: 'kg',
  time: 's',
  current: 'A',
  temperature: 'K',
  luminousIntensity: 'cd',
  USD: 'USD',
  CAD: 'CAD',
  MXN: 'MXN',
  EUR: 'EUR',
  GBP: 'GBP',
};

const usBaseSymbols: Readonly<Record<Base, string>> = { ...baseSymbols, length: 'ft', mass: 'lb' };

interface Term {
  readonly symbol: string;
  readonly power: number;
}

/** The shortest product of at most one electrical unit and the bases that has the dimension. */
function composed(type: QuantityType, system: UnitSystem): Unit {
  const symbols = system === 'US' ? usBaseSymbols : baseSymbols;
  let best = baseTerms(type.dimension, symbols);
  for (const symbol of ['V', 'Ω', 'W', 'F', 'H', 'T']) {
    for (const power of [1, 2, -1, -2, 0.5, -0.5]) {
      const rest = divideDimensions(type.dimension, raiseDimension(known(symbol).type.dimension, power));
      const terms = [{ symbol, power }, ...baseTerms(rest, symbols)];
      if (length(terms) < length(best)) {
        best = terms;
      }
    }
  }
  const symbol = write(best);
  const unit = parseUnit(symbol);
  // Powers that no unit text holds (m^(7/5)) are written as far as they can be; the factor is right all the same.
  return 'problem' in unit || unit.type.dimension !== type.dimension
    ? { symbol, type, factor: factorOf(best), offset: 0 }
    : { ...unit, type };
}

const baseTerms = (dimension: Dimension, symbols: Readonly<Record<Base, string>>): Term[] =>
  bases.map((base, i) => ({ symbol: symbols[base], power: dimension.exponents[i] })).filter((term) => term.power !== 0);

const length = (terms: readonly Term[]): number => terms.reduce((sum, { power }) => sum + 1 + Math.abs(power), 0);

function write(terms: readonly Term[]): string {
  const above = terms.filter((t) => t.power > 0).map((t) => t.symbol + exponentSymbol(t.power));
  const below = terms.filter((t) => t.power < 0).map((t) => t.symbol + exponentSymbol(-t.power));
  const divisor = below.length > 1 ? `(${below.join('·')})` : below[0];
  return above.join('·') + (divisor ? `${above.length > 0 ? '' : '1'}/${divisor}` : '');
}

const factorOf = (terms: readonly Term[]): number =>
  terms.reduce((product, { symbol, power }) => product * known(symbol).factor ** power, 1);
