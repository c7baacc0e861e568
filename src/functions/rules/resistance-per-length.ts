import { type Call, defineFormula, Failure } from '../../language';
import { type Conductor, conductorText } from '../conductor';
import { tablesOf } from '../settings';
import { resistanceReference } from './resistance-reference';
import { temperatureCoefficient } from './temperature-coefficient';

const resistanceAtTemperature = defineFormula({
  symbol: 'r_T',
  text: 'r_ref * (1 + alpha * (T - T_ref))',
  units: { r_ref: 'Ω/kft', alpha: '1/°C', T: '°C', T_ref: '°C' },
  result: 'Ω/kft',
});

/**
 * DC resistance of one conductor in Ω/kft at its own temperature in °C. The coefficient comes from the table that
 * belongs to the resistance's reference temperature, because the two must never be mixed.
 */
export function resistancePerLength(call: Call, conductor: Conductor, temperatureC: number): number | Failure {
  const tables = tablesOf(call);
  const reference = resistanceReference(tables, conductor);
  if (!reference) {
    return new Failure(
      `The tables of ${tables.edition} have no resistance for ${conductorText(conductor)}: measure a cut piece of known length, or choose a listed size.`,
      'conductor',
      'not-in-table',
    );
  }
  const { ohmPerKft, referenceC } = reference;
  call.table({
    symbol: `r_${referenceC}`,
    ...reference.printed,
    source: reference.source,
    row: reference.shown,
    remark: `at ${referenceC} °C`,
  });
  if (temperatureC === referenceC) {
    return ohmPerKft;
  }
  const alpha = temperatureCoefficient(call, conductor.material, referenceC, 'temperature');
  return alpha instanceof Failure
    ? alpha
    : resistanceAtTemperature(call, { r_ref: ohmPerKft, alpha, T: temperatureC, T_ref: referenceC });
}
