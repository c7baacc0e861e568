import { Failure } from '../../../language';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** Air conditioning and refrigeration by nameplate: the minimum circuit ampacity holds the added 25 % already. */
export const hvac: KindOfCircuit = {
  kinds: ['hvac'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  demand: (_call, { mca }) =>
    mca === undefined
      ? new Failure(
          'An hvac circuit is sized from the nameplate: give its minimum circuit ampacity as mca.',
          undefined,
          'too-few-givens',
        )
      : { load: mca, required: mca, because: `nameplate minimum circuit ampacity ${figure(mca)} A` },
  device: (call, { mocp }) => {
    if (mocp === undefined) {
      return new Failure(
        'An hvac circuit takes its device from the nameplate: give its maximum overcurrent protection as mocp, or the ocpd that is fitted.',
        undefined,
        'too-few-givens',
      );
    }
    const found = tablesOf(call).standardRatingAtMost(mocp);
    return found
      ? { rating: found.row.rating, because: `largest standard rating within the nameplate's ${figure(mocp)} A` }
      : new Failure(`No standard rating is as small as ${figure(mocp)} A.`, 'mocp', 'no-standard-size');
  },
  // The nameplate sets the device, so it may stand above the conductor's ampacity (440.22, 240.4(G)).
  allows: (_call, { mocp }, rating) => mocp === undefined || reaches(mocp, rating),
};
