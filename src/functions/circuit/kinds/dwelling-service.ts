import { type Call, defineFormula, Failure } from '../../../language';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { tablesOf } from '../../settings';
import type { CircuitLoad, KindOfCircuit } from './kind';

const reducedRating = defineFormula({ symbol: 'I_required', text: '0.83 * I_n', units: { I_n: 'A' }, result: 'A' });

/** Ratings in amperes that the rule covers. */
const smallestRating = 100;
const largestRating = 400;

const smallestFor = (call: Call, { load = 0 }: CircuitLoad): number | undefined =>
  smallestDeviceFor(tablesOf(call), Math.max(load, smallestRating))?.row.rating;

const ratingOf = (call: Call, load: CircuitLoad): number | undefined => load.ocpd ?? smallestFor(call, load);

/** Single-phase service or main feeder with the entire load of one dwelling: 83 % of its rating (NEC 310.12). */
export const dwellingService: KindOfCircuit = {
  kinds: ['dwelling_service'],
  askedIfContinuous: false,
  smallConductorLimits: true,
  // The table's size for 100 A, 4 AWG copper or 2 AWG aluminum, carries 83 A at 75 °C and not at 60 °C.
  unmarkedTerminals: { rating: 75, by: 'Table 310.12(A)' },
  smallestDevice: smallestFor,
  demand: (call, load) => {
    if (load.load === undefined) {
      return new Failure('The service has no load: give the calculated load in A or VA.', undefined, 'too-few-givens');
    }
    if (load.phases !== 1) {
      return new Failure(
        'The 83 % rule of 310.12 is for single-phase dwellings: size this as general.',
        'phases',
        'not-covered',
      );
    }
    const rating = ratingOf(call, load);
    if (rating === undefined || rating < smallestRating || rating > largestRating) {
      return new Failure(
        `The 83 % rule of 310.12 covers ratings of ${smallestRating} A to ${largestRating} A: size this one as general.`,
        load.ocpd === undefined ? 'load' : 'ocpd',
        'not-covered',
      );
    }
    call.assume('the conductors carry the entire load of one dwelling');
    const required = reducedRating(call, { I_n: rating });
    return { load: required, required, because: `83 % of the ${figure(rating)} A rating = ${figure(required)} A` };
  },
  device: (call, load) => ({
    rating: ratingOf(call, load) ?? smallestRating,
    because: `smallest standard rating for ${figure(load.load ?? 0)} A, at least ${smallestRating} A`,
  }),
  allows: (_call, _load, rating, ampacity, sets) => reaches(ampacity.ampacity * sets, 0.83 * rating),
};
