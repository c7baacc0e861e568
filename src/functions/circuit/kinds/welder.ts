import { type Call, defineFormula, Failure } from '../../../language';
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

/** Largest device over the welder's rated primary current, and over its conductors' ampacity (NEC 630.12, 630.32). */
const devicePercents: Readonly<Record<WelderWord, number>> = { arc: 200, motor_generator: 200, resistance: 300 };

const percentFor = ({ welder: type = usualWelder }: CircuitLoad): number => devicePercents[type];
const timesPercent = (load: CircuitLoad, current: number): number => (current * percentFor(load)) / 100;
const sectionFor = ({ welder: type = usualWelder }: CircuitLoad): string =>
  type === 'resistance' ? '630.32' : '630.12';

/** The next standard rating up from the percentage of a current, in amperes. */
const largestFor = (call: Call, load: CircuitLoad, current: number): number | undefined =>
  smallestDeviceFor(tablesOf(call), timesPercent(load, current))?.row.rating;

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
  device: (call, load, demand) => {
    // The conductor carries less than the rated current, so its own percentage is the one that decides.
    const rating = largestFor(call, load, demand.required);
    return rating === undefined
      ? new Failure(
          `${figure(timesPercent(load, demand.required))} A is above the largest standard rating.`,
          'load',
          'no-standard-size',
        )
      : {
          rating,
          because: `${percentFor(load)} % of the ${figure(demand.required)} A that the conductor must carry, next standard rating (${sectionFor(load)})`,
        };
  },
  deviceBounds: (call, load, { ampacity }, sets) => {
    const current = load.load ?? 0;
    const carried = ampacity * sets;
    const ofConductor = carried < current;
    return {
      section: sectionFor(load),
      because: `${percentFor(load)} % of ${ofConductor ? `the ${figure(carried)} A that the conductor may carry` : `the welder’s ${figure(current)} A`}, next standard rating`,
      largest: largestFor(call, load, ofConductor ? carried : current),
    };
  },
  allows: (call, load, rating, ampacity, sets) =>
    [load.load ?? 0, ampacity.ampacity * sets].every((current) =>
      reaches(largestFor(call, load, current) ?? 0, rating),
    ),
};
