import { Failure } from '../../../language';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { nameplateDemand } from '../../rules/required-current';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** A device need not be smaller than this, in amperes (NEC 440.22(A)). */
const smallestDevice = 15;

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
      : nameplateDemand(mca, mca),
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
  deviceBounds: (call, { mca = 0, mocp }) => {
    // Without a nameplate limit: 225 % of a rated-load current of which the minimum circuit ampacity is at least 125 %.
    const most = Math.max(smallestDevice, (mca * 225) / 125);
    return mocp === undefined
      ? {
          section: '440.22',
          because: `225 % of the rated-load current behind a minimum circuit ampacity of ${figure(mca)} A; the nameplate may say less: give that as \`mocp\``,
          largest: tablesOf(call).standardRatingAtMost(most)?.row.rating,
        }
      : undefined;
  },
  // The nameplate sets the device, so it may stand above the conductor's ampacity (440.22, 240.4(G)).
  allows: (_call, { mocp }, rating) => mocp === undefined || reaches(mocp, rating),
};
