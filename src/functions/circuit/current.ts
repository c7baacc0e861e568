import { type Call, Failure } from '../../language';
import { lineCurrent } from '../rules/line-current';
import type { KindOfCircuit } from './kinds/kind';

/** The load's current in amperes; undefined when the sheet gives none, as for a nameplate circuit. */
export function currentOf(
  call: Call,
  args: {
    readonly load: { readonly value: number; readonly unit: 'A' | 'W' | 'VA' } | undefined;
    readonly voltage: number | undefined;
    readonly phases: number;
    readonly power_factor: number;
  },
  rules: KindOfCircuit,
): number | undefined | Failure {
  const { load, voltage, phases } = args;
  if (load === undefined || load.unit === 'A') {
    return load?.value;
  }
  if (voltage === undefined) {
    return new Failure(
      'The load is a power, and its current hangs on the voltage: give the voltage, or the load in A.',
      'load',
      'too-few-givens',
    );
  }
  const power = { value: load.value, unit: load.unit };
  return rules.currentOf
    ? rules.currentOf(call, { power, voltage, phases })
    : lineCurrent(call, { power, voltage, phases, powerFactor: args.power_factor, efficiency: 1 });
}
