import { defineFormula, Failure } from '../../../language';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { dutyMultiplier, type WelderWord } from '../../rules/welder-duty';
import { tablesOf } from '../../settings';
import type { CircuitLoad, KindOfCircuit } from './kind';

const weldingCurrent = defineFormula({
  symbol: 'I_required',
  text: 'k * I',
  units: { k: '', I: 'A' },
  result: 'A',
});

/** Taken where the sheet does not say the welder. */
const usualWelder: WelderWord = 'arc';

/** Largest device, over the welder's rated primary current (NEC 630.12(A) and 630.32(A)). */
const devicePercents: Readonly<Record<WelderWord, number>> = { arc: 200, motor_generator: 200, resistance: 300 };

const percentFor = ({ welder: type = usualWelder }: CircuitLoad): number => devicePercents[type];
const largestFor = (load: CircuitLoad): number => ((load.load ?? 0) * percentFor(load)) / 100;

/** Welder by its rated primary current and duty cycle. */
export const welder: KindOfCircuit = {
  kinds: ['welder'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  demand: (call, { load, duty, welder: type }) => {
    if (load === undefined || duty === undefined) {
      return new Failure(
        'A welder circuit is sized from its nameplate: give its rated primary current as load, and its duty cycle as duty.',
        undefined,
        'too-few-givens',
      );
    }
    if (type === undefined) {
      call.assume('arc welder without a motor generator taken: welder not given');
    }
    const found = dutyMultiplier(call, type ?? usualWelder, duty);
    if (found instanceof Failure) {
      return found;
    }
    const k = found;
    const required = weldingCurrent(call, { k, I: load });
    return { load: required, required, because: `${figure(load)} A at ${figure(duty)} % duty = ${figure(required)} A` };
  },
  device: (call, load) => {
    const found = smallestDeviceFor(tablesOf(call), largestFor(load));
    return found
      ? {
          rating: found.row.rating,
          because: `largest allowed: ${percentFor(load)} % of ${figure(load.load ?? 0)} A, next standard rating (${load.welder === 'resistance' ? '630.32' : '630.12'})`,
        }
      : new Failure(`${figure(largestFor(load))} A is above the largest standard rating.`, 'load', 'no-standard-size');
  },
  allows: (call, load, rating) => reaches(smallestDeviceFor(tablesOf(call), largestFor(load))?.row.rating ?? 0, rating),
};
