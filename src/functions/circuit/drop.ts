import { type Call, defineFormula, Failure } from '../../language';
import type { Conductor } from '../conductor';
import type { RacewayWord } from '../raceway-words';
import { effectiveImpedance } from '../rules/ac-impedance';
import { resistancePerLength } from '../rules/resistance-per-length';
import { voltageDrop } from '../rules/voltage-drop';

const percentOf = defineFormula({
  symbol: 'drop',
  text: 'U_drop / U',
  units: { U_drop: 'V', U: 'V' },
  result: '%',
});

/** Operating temperature of the conductor table, in °C. */
export const operatingTemperatureC = 75;

export interface CircuitRun {
  readonly current: number;
  readonly length: number | undefined;
  readonly voltage: number | undefined;
  readonly phases: number;
  readonly sets: number;
  readonly raceway: RacewayWord | undefined;
  readonly powerFactor: number;
}

export interface CircuitDrop {
  readonly volts: number;
  readonly percent: number | undefined;
}

/**
 * The circuit's voltage drop at 75 °C: by AC impedance where the raceway is given, by DC resistance otherwise. Undefined
 * where the length or the table value is not known.
 */
export function circuitDrop(call: Call, run: CircuitRun, conductor: Conductor): CircuitDrop | undefined {
  if (run.length === undefined) {
    return undefined;
  }
  const ohmPerKft = run.raceway
    ? effectiveImpedance(call, conductor, { raceway: run.raceway, powerFactor: run.powerFactor })
    : resistancePerLength(call, conductor, operatingTemperatureC);
  if (ohmPerKft instanceof Failure) {
    return undefined;
  }
  const volts = voltageDrop(call, { ...run, length: run.length, ohmPerKft });
  return {
    volts,
    percent: run.voltage === undefined ? undefined : percentOf(call, { U_drop: volts, U: run.voltage }),
  };
}
