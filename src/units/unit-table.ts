import { type Dimension, dimensionless, dimensionOf } from './dimension';
import { type Kind, powerDimension, temperatureDimension } from './quantity-type';

/** One unit that has a name of its own; compounds (`Ω/kft`) and prefixed units (`mA`) are made from these. */
export interface NamedUnit {
  /** As shown to people. */
  readonly symbol: string;
  /** Other spellings that are read as the same unit; ASCII ones first. */
  readonly also?: readonly string[];
  /** In full, in the singular: `volt`. */
  readonly name: string;
  readonly dimension: Dimension;
  /** `plain` unless said. */
  readonly kind?: Kind;
  /** Of one unit, in the coherent SI unit. */
  readonly value: number;
  /** Zero of a temperature scale, in kelvins. */
  readonly offset?: number;
  /** The SI prefixes it takes, each one letter; none unless said. */
  readonly prefixes?: string;
}

const length = dimensionOf({ length: 1 });
const volume = dimensionOf({ length: 3 });
const mass = dimensionOf({ mass: 1 });
const time = dimensionOf({ time: 1 });
const current = dimensionOf({ current: 1 });
const temperature = temperatureDimension;
const power = powerDimension;
const energy = dimensionOf({ length: 2, mass: 1, time: -2 });
const charge = dimensionOf({ current: 1, time: 1 });
const voltage = dimensionOf({ length: 2, mass: 1, time: -3, current: -1 });
const resistance = dimensionOf({ length: 2, mass: 1, time: -3, current: -2 });
const conductance = dimensionOf({ length: -2, mass: -1, time: 3, current: 2 });
const capacitance = dimensionOf({ length: -2, mass: -1, time: 4, current: 2 });
const inductance = dimensionOf({ length: 2, mass: 1, time: -2, current: -2 });
const fluxDensity = dimensionOf({ mass: 1, time: -2, current: -1 });
const flux = dimensionOf({ length: 2, mass: 1, time: -2, current: -1 });
const frequency = dimensionOf({ time: -1 });
const force = dimensionOf({ length: 1, mass: 1, time: -2 });
const pressure = dimensionOf({ length: -1, mass: 1, time: -2 });
const flow = dimensionOf({ length: 3, time: -1 });
const light = dimensionOf({ luminousIntensity: 1 });
const illuminance = dimensionOf({ luminousIntensity: 1, length: -2 });

/** Exact by the international yard and pound agreement of 1959 (NIST SP 811, appendix B.6). */
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
/** Standard gravity, m/s², exact by CGPM 1901. */
const gravity = 9.80665;
/** International Table Btu in joules, exact: 4.1868 J/g·K × 1 lb × 5/9 K (NIST SP 811, B.8, note to Btu_IT). */
const btu = 1055.05585262;

/**
 * Every unit with a name, by exact definition. Power factors follow from the kinds: W is real, VA apparent and var
 * reactive power; they share a dimension and are not the same thing.
 */
export const namedUnits: readonly NamedUnit[] = [
  // SI base and derived units: SI Brochure, 9th edition, tables 2, 4 and 7.
  { symbol: 'm', name: 'metre', dimension: length, value: 1, prefixes: 'kdcmµn' },
  { symbol: 'g', name: 'gram', dimension: mass, value: 1e-3, prefixes: 'kmµ' },
  { symbol: 's', name: 'second', dimension: time, value: 1, prefixes: 'mµnp' },
  { symbol: 'A', name: 'ampere', dimension: current, value: 1, prefixes: 'Mkmµnp' },
  { symbol: 'K', name: 'kelvin', dimension: temperature, value: 1, prefixes: 'm' },
  { symbol: 'V', name: 'volt', dimension: voltage, value: 1, prefixes: 'Mkmµn' },
  { symbol: 'Ω', also: ['ohm', 'Ohm', '\u2126'], name: 'ohm', dimension: resistance, value: 1, prefixes: 'TGMkmµn' },
  { symbol: 'S', name: 'siemens', dimension: conductance, value: 1, prefixes: 'Mkmµn' },
  { symbol: 'F', name: 'farad', dimension: capacitance, value: 1, prefixes: 'mµnp' },
  { symbol: 'H', name: 'henry', dimension: inductance, value: 1, prefixes: 'mµn' },
  { symbol: 'C', name: 'coulomb', dimension: charge, value: 1, prefixes: 'kmµnp' },
  { symbol: 'T', name: 'tesla', dimension: fluxDensity, value: 1, prefixes: 'mµn' },
  { symbol: 'Wb', name: 'weber', dimension: flux, value: 1, prefixes: 'mµ' },
  { symbol: 'Hz', name: 'hertz', dimension: frequency, value: 1, prefixes: 'TGMkm' },
  { symbol: 'J', name: 'joule', dimension: energy, value: 1, prefixes: 'TGMkm' },
  { symbol: 'N', name: 'newton', dimension: force, value: 1, prefixes: 'Mkm' },
  { symbol: 'Pa', name: 'pascal', dimension: pressure, value: 1, prefixes: 'GMkm' },
  { symbol: 'cd', name: 'candela', dimension: light, value: 1 },
  { symbol: 'lm', name: 'lumen', dimension: light, value: 1, prefixes: 'Mk' },
  { symbol: 'lx', name: 'lux', dimension: illuminance, value: 1, prefixes: 'k' },
  { symbol: 'rad', name: 'radian', dimension: dimensionless, value: 1, prefixes: 'm' },

  // Power by kind: W in the SI Brochure; V·A and var in ISO/IEC 80000-6.
  { symbol: 'W', name: 'watt', dimension: power, kind: 'real', value: 1, prefixes: 'TGMkmµn' },
  { symbol: 'VA', name: 'volt-ampere', dimension: power, kind: 'apparent', value: 1, prefixes: 'GMkm' },
  { symbol: 'var', name: 'var', dimension: power, kind: 'reactive', value: 1, prefixes: 'GMkm' },
  // Energy and charge over hours; an hour is 3600 s exactly.
  { symbol: 'Wh', name: 'watt-hour', dimension: energy, value: 3600, prefixes: 'TGMkm' },
  { symbol: 'VAh', name: 'volt-ampere-hour', dimension: energy, value: 3600, prefixes: 'GMk' },
  { symbol: 'varh', name: 'var-hour', dimension: energy, value: 3600, prefixes: 'GMk' },
  { symbol: 'Ah', name: 'ampere-hour', dimension: charge, value: 3600, prefixes: 'km' },

  // Accepted beside the SI: SI Brochure, table 8.
  { symbol: 'min', name: 'minute', dimension: time, value: 60 },
  { symbol: 'h', name: 'hour', dimension: time, value: 3600 },
  { symbol: 'd', name: 'day', dimension: time, value: 86400 },
  { symbol: 'L', name: 'litre', dimension: volume, value: 1e-3, prefixes: 'm' },
  { symbol: '°', also: ['deg'], name: 'degree of angle', dimension: dimensionless, value: Math.PI / 180 },
  { symbol: '%', name: 'per cent', dimension: dimensionless, value: 0.01 },
  { symbol: 'ppm', name: 'part per million', dimension: dimensionless, value: 1e-6 },
  // Rotational frequency of ISO 80000-3: one turn a minute is 1/60 s⁻¹, so that 1800 rpm is 30 Hz. The angular velocity is 2π times it.
  { symbol: 'rpm', name: 'revolution per minute', dimension: frequency, value: 1 / 60 },

  // Temperatures. °C: SI Brochure 2.3.1; °F: NIST SP 811, B.8. A difference is written in K or with Δ.
  {
    symbol: '°C',
    also: ['degC', '\u2103'],
    name: 'degree Celsius',
    dimension: temperature,
    kind: 'absolute',
    value: 1,
    offset: 273.15,
  },
  {
    symbol: '°F',
    also: ['degF', '\u2109'],
    name: 'degree Fahrenheit',
    dimension: temperature,
    kind: 'absolute',
    value: 5 / 9,
    offset: (459.67 * 5) / 9,
  },
  { symbol: 'Δ°C', also: ['deltadegC'], name: 'Celsius degree of difference', dimension: temperature, value: 1 },
  { symbol: 'Δ°F', also: ['deltadegF'], name: 'Fahrenheit degree of difference', dimension: temperature, value: 5 / 9 },

  // US customary length, exact: NIST SP 811, B.6. A mil is a thousandth of an inch.
  { symbol: 'in', name: 'inch', dimension: length, value: inch },
  { symbol: 'ft', name: 'foot', dimension: length, value: foot },
  { symbol: 'yd', name: 'yard', dimension: length, value: 0.9144 },
  { symbol: 'mi', name: 'mile', dimension: length, value: 1609.344 },
  { symbol: 'kft', name: 'thousand feet', dimension: length, value: 304.8 },
  { symbol: 'mil', name: 'mil', dimension: length, value: 2.54e-5 },
  // A circular mil is the area of a circle one mil across, π/4 mil² (NIST SP 811, B.8).
  {
    symbol: 'cmil',
    name: 'circular mil',
    dimension: dimensionOf({ length: 2 }),
    value: (Math.PI / 4) * 2.54e-5 * 2.54e-5,
  },
  {
    symbol: 'kcmil',
    also: ['MCM'],
    name: 'thousand circular mils',
    dimension: dimensionOf({ length: 2 }),
    value: (Math.PI / 4) * 2.54 * 2.54e-7,
  },

  // US customary mass, force, volume and flow, exact: NIST SP 811, B.6 and B.8. A US gallon is 231 in³.
  { symbol: 'lb', name: 'pound', dimension: mass, value: pound },
  { symbol: 'oz', name: 'ounce', dimension: mass, value: 0.028349523125 },
  { symbol: 'lbf', name: 'pound-force', dimension: force, value: pound * gravity },
  { symbol: 'psi', name: 'pound-force per square inch', dimension: pressure, value: (pound * gravity) / (inch * inch) },
  { symbol: 'gal', name: 'US gallon', dimension: volume, value: 3.785411784e-3 },
  { symbol: 'cfm', name: 'cubic foot per minute', dimension: flow, value: 0.028316846592 / 60 },
  { symbol: 'gpm', name: 'US gallon per minute', dimension: flow, value: 3.785411784e-3 / 60 },
  { symbol: 'fc', name: 'footcandle', dimension: illuminance, value: 1 / (foot * foot) },

  // Power and heat of the trade. The electric horsepower is 746 W exactly (NIST SP 811, B.8), which is what motor rules mean.
  { symbol: 'hp', name: 'electric horsepower', dimension: power, kind: 'real', value: 746 },
  { symbol: 'Btu', also: ['BTU'], name: 'British thermal unit', dimension: energy, value: btu },
  { symbol: 'MBH', name: 'thousand Btu per hour', dimension: power, kind: 'real', value: (1000 * btu) / 3600 },
  // 12,000 Btu/h exactly (NIST SP 811, B.8).
  { symbol: 'ton_r', name: 'ton of refrigeration', dimension: power, kind: 'real', value: (12000 * btu) / 3600 },

  // Currencies, ISO 4217. Each is a dimension of its own.
  { symbol: 'USD', name: 'US dollar', dimension: dimensionOf({ USD: 1 }), value: 1 },
  { symbol: 'CAD', name: 'Canadian dollar', dimension: dimensionOf({ CAD: 1 }), value: 1 },
  { symbol: 'MXN', name: 'Mexican peso', dimension: dimensionOf({ MXN: 1 }), value: 1 },
  { symbol: 'EUR', name: 'euro', dimension: dimensionOf({ EUR: 1 }), value: 1 },
  { symbol: 'GBP', name: 'pound sterling', dimension: dimensionOf({ GBP: 1 }), value: 1 },
];
