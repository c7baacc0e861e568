import { type Call, Failure } from '../../language';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { motorVoltage, wattsPerHorsepower } from './motor-current';

/** Locked-rotor current of a three-phase motor in amperes (NEC Table 430.251(B)); `power` is the output in W. */
export function lockedRotorCurrent(
  call: Call,
  motor: { readonly power: number; readonly voltage: number },
): number | Failure {
  const tables = tablesOf(call);
  const voltage = motorVoltage(tables, 'three-phase', motor.voltage) ?? motor.voltage;
  const found = tables.lockedRotorCurrent(voltage, motor.power / wattsPerHorsepower);
  if (!found) {
    return new Failure(
      `The locked-rotor table has no ${figure(motor.power / wattsPerHorsepower)} hp motor at ${figure(voltage)} V: give the ocpd by its nameplate.`,
      'load',
      'not-in-table',
    );
  }
  call.table({ symbol: 'I_LR', value: found.row.amperes, unit: 'A', source: found.source, row: found.shown });
  return found.row.amperes;
}
