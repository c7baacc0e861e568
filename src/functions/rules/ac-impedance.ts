import { type Call, defineFormula, Failure } from '../../language';
import type { AcImpedanceRow, Found } from '../../tables';
import { type Conductor, conductorText } from '../conductor';
import { conduitOf, type RacewayWord } from '../raceway-words';
import { tablesOf } from '../settings';
import { cellsOf } from './shown-cells';
import { temperatureCoefficient } from './temperature-coefficient';

const effective = defineFormula({
  symbol: 'z_e',
  text: 'r_ac * cos_phi + x * sin(acos(cos_phi))',
  units: { r_ac: 'Ω/kft', x: 'Ω/kft', cos_phi: '' },
  result: 'Ω/kft',
});

function rowOf(call: Call, conductor: Conductor): Found<AcImpedanceRow> | Failure {
  return (
    tablesOf(call).acImpedance(conductor.size.text) ??
    new Failure(
      `The AC impedance table of ${tablesOf(call).edition} has no ${conductor.size.text}: choose a listed size.`,
      'conductor',
      'not-in-table',
    )
  );
}

/** AC resistance of one conductor to neutral, in Ω/kft at 75 °C and 60 Hz (NEC Chapter 9 Table 9). */
export function acResistance(call: Call, conductor: Conductor, raceway: RacewayWord): number | Failure {
  const found = rowOf(call, conductor);
  if (found instanceof Failure) {
    return found;
  }
  const conduit = conduitOf[raceway];
  const value = found.row.rOhmPerKft[conductor.material][conduit];
  if (value === null) {
    return new Failure(
      `${found.source.table} has no AC resistance for ${conductorText(conductor)}: choose a larger size.`,
      'conductor',
      'not-in-table',
    );
  }
  call.table({
    symbol: 'r_ac',
    value,
    unit: 'Ω/kft',
    source: found.source,
    row: cellsOf(found, 'size', `AC resistance, Ω/kft, ${conductor.material} in ${conduit}`),
  });
  return value;
}

/** Temperature that the AC table holds for, in °C. */
const tableC = 75;

const resistanceAtTemperature = defineFormula({
  symbol: 'r_T',
  text: 'r_ac * (1 + alpha * (T - T_ref))',
  units: { r_ac: 'Ω/kft', alpha: '1/°C', T: '°C', T_ref: '°C' },
  result: 'Ω/kft',
});

/** AC resistance in Ω/kft at another temperature in °C, as direct-current resistance goes with it. */
export function acResistanceAt(
  call: Call,
  conductor: Conductor,
  raceway: RacewayWord,
  temperatureC: number,
): number | Failure {
  const r_ac = acResistance(call, conductor, raceway);
  if (r_ac instanceof Failure || temperatureC === tableC) {
    return r_ac;
  }
  const alpha = temperatureCoefficient(call, conductor.material, tableC, 'temperature');
  return alpha instanceof Failure
    ? alpha
    : resistanceAtTemperature(call, { r_ac, alpha, T: temperatureC, T_ref: tableC });
}

/** Reactance of one conductor to neutral, in Ω/kft at 60 Hz (NEC Chapter 9 Table 9). */
export function reactance(call: Call, conductor: Conductor, raceway: RacewayWord): number | Failure {
  const found = rowOf(call, conductor);
  if (found instanceof Failure) {
    return found;
  }
  const steel = conduitOf[raceway] === 'steel';
  const value = steel ? found.row.xOhmPerKft.steel : found.row.xOhmPerKft.nonmagnetic;
  call.table({
    symbol: 'x',
    value,
    unit: 'Ω/kft',
    source: found.source,
    row: cellsOf(found, 'size', steel ? 'X, Ω/kft, in steel' : 'X, Ω/kft, in PVC or aluminum'),
  });
  return value;
}

/** What a lagging load sees of one conductor: R cos φ + X sin φ, in Ω/kft. */
export function effectiveImpedance(
  call: Call,
  conductor: Conductor,
  circuit: { readonly raceway: RacewayWord; readonly powerFactor: number },
): number | Failure {
  const r_ac = acResistance(call, conductor, circuit.raceway);
  if (r_ac instanceof Failure) {
    return r_ac;
  }
  const x = reactance(call, conductor, circuit.raceway);
  return x instanceof Failure ? x : effective(call, { r_ac, x, cos_phi: circuit.powerFactor });
}
