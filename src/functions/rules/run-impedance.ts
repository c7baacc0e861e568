import { type Call, Failure } from '../../language';
import type { Conductor } from '../conductor';
import * as shared from '../parameters';
import type { RacewayWord } from '../raceway-words';
import { effectiveImpedance } from './ac-impedance';
import { assumeTemperature } from './operating-temperature';
import { resistancePerLength } from './resistance-per-length';

/** What a drop is worked out by: DC resistance at a temperature, or AC impedance in a raceway at a power factor. */
export const runImpedanceParameters = {
  raceway: { ...shared.raceway, default: undefined, optional: true },
  power_factor: { ...shared.powerFactor, named: true, default: 1 },
} as const;

export interface RunImpedance {
  readonly temperature: number;
  readonly raceway?: RacewayWord;
  readonly power_factor: number;
}

/** The impedance table holds for 75 °C, and a power factor needs its reactance. */
export function misfitOfRun(run: RunImpedance, call: Call): Failure | undefined {
  if (run.raceway && call.given('temperature') && run.temperature !== 75) {
    return new Failure(
      'With a raceway the drop goes by the AC impedance table, which holds at 75 °C: leave out the temperature or the raceway.',
      'temperature',
      'not-at-that-temperature',
    );
  }
  return !run.raceway && call.given('power_factor')
    ? new Failure(
        'A power factor needs the reactance, which hangs on the raceway: give the raceway, such as raceway: EMT, or leave the power factor out.',
        'power_factor',
        'raceway-missing',
      )
    : undefined;
}

/** Ohms per thousand feet of one conductor that its current drops over; the temperature that is taken is told. */
export function runImpedance(call: Call, conductor: Conductor, run: RunImpedance): number | Failure {
  if (run.raceway) {
    return effectiveImpedance(call, conductor, { raceway: run.raceway, powerFactor: run.power_factor });
  }
  assumeTemperature(call, run.temperature, 'operating temperature of the table');
  return resistancePerLength(call, conductor, run.temperature);
}
