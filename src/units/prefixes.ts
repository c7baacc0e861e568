import { parseUnit } from './parse-unit';
import type { Unit } from './unit';

/** From which magnitude on, in the unit without prefix, a computed value takes each unit; the first that fits counts. */
type Ladder = readonly (readonly [from: number, symbol: string])[];

const ladders: Readonly<Record<string, Ladder>> = {
  W: [
    [1e9, 'GW'],
    [1e6, 'MW'],
    [1e3, 'kW'],
    [0.1, 'W'],
    [0, 'mW'],
  ],
  VA: [
    [1e9, 'GVA'],
    [1e6, 'MVA'],
    [1e3, 'kVA'],
    [0, 'VA'],
  ],
  var: [
    [1e9, 'Gvar'],
    [1e6, 'Mvar'],
    [1e3, 'kvar'],
    [0, 'var'],
  ],
  Wh: [
    [1e9, 'GWh'],
    [1e6, 'MWh'],
    [1e3, 'kWh'],
    [0, 'Wh'],
  ],
  Ω: [
    [1e9, 'GΩ'],
    [1e6, 'MΩ'],
    [1e3, 'kΩ'],
    [0.1, 'Ω'],
    [1e-4, 'mΩ'],
    [0, 'µΩ'],
  ],
  A: [
    [1e4, 'kA'],
    [0.1, 'A'],
    [1e-4, 'mA'],
    [0, 'µA'],
  ],
  V: [
    [1e4, 'kV'],
    [0.1, 'V'],
    [1e-4, 'mV'],
    [0, 'µV'],
  ],
  F: [
    [1, 'F'],
    [1e-7, 'µF'],
    [1e-10, 'nF'],
    [0, 'pF'],
  ],
  H: [
    [1, 'H'],
    [1e-3, 'mH'],
    [0, 'µH'],
  ],
  S: [
    [0.1, 'S'],
    [1e-4, 'mS'],
    [0, 'µS'],
  ],
  Hz: [
    [1e9, 'GHz'],
    [1e6, 'MHz'],
    [1e4, 'kHz'],
    [0, 'Hz'],
  ],
};

/**
 * The unit that shows a computed value best: 0.0004 A in mA, 9200 W in kW. Only for units that follow from the
 * arithmetic; what the author wrote stays. Other units come back as they are.
 */
export function withPrefix(base: number, unit: Unit): Unit {
  const ladder = ladders[unit.symbol];
  const magnitude = Math.abs(base / unit.factor);
  if (!ladder || magnitude === 0 || !Number.isFinite(magnitude)) {
    return unit;
  }
  const symbol = ladder.find(([from]) => magnitude >= from)?.[1] ?? unit.symbol;
  const prefixed = parseUnit(symbol);
  return 'problem' in prefixed ? unit : { ...prefixed, type: unit.type };
}
