import { defineFormula, Failure } from '../../../language';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/**
 * The multipliers of NEC Table 630.11(A) for arc welders without a motor generator: the root of the duty cycle to two
 * places, and 0.45 for 20 % and less.
 */
const weldingCurrent = defineFormula({
  symbol: 'I_required',
  text: 'I * round(sqrt(max(duty, 20 %)), 0.01)',
  units: { I: 'A', duty: '%' },
  result: 'A',
});

/** Largest device, over the welder's rated primary current (NEC 630.12(A)). */
const devicePercent = 200;

const largestFor = (load: number): number => (load * devicePercent) / 100;

/** Arc welder by its rated primary current and duty cycle. */
export const welder: KindOfCircuit = {
  kinds: ['welder'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  demand: (call, { load, duty }) => {
    if (load === undefined || duty === undefined) {
      return new Failure(
        'A welder circuit is sized from its nameplate: give its rated primary current as load, and its duty cycle as duty.',
        undefined,
        'too-few-givens',
      );
    }
    call.assume('arc welder without a motor generator taken; a resistance welder has other multipliers');
    const required = weldingCurrent(call, { I: load, duty });
    return { load: required, required, because: `${figure(load)} A at ${figure(duty)} % duty = ${figure(required)} A` };
  },
  device: (call, { load = 0 }) => {
    const found = smallestDeviceFor(tablesOf(call), largestFor(load));
    return found
      ? {
          rating: found.row.rating,
          because: `largest allowed: ${devicePercent} % of ${figure(load)} A, next standard rating (630.12)`,
        }
      : new Failure(`${figure(largestFor(load))} A is above the largest standard rating.`, 'load', 'no-standard-size');
  },
  allows: (call, { load = 0 }, rating) =>
    reaches(smallestDeviceFor(tablesOf(call), largestFor(load))?.row.rating ?? 0, rating),
};
