import { Failure } from '../../../language';
import { figure } from '../../number-text';
import { largestDeviceAllowed } from '../../rules/device-on-conductor';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { demandOf, nameplateDemand } from '../../rules/required-current';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** The general rule of Articles 210, 215 and 240; also taken while a sheet does not say the kind. */
export const general: KindOfCircuit = {
  kinds: [undefined, 'general'],
  askedIfContinuous: true,
  smallConductorLimits: true,
  demand: (call, { load, continuous, mca }) => {
    if (load !== undefined) {
      return demandOf(call, load, continuous);
    }
    return mca === undefined
      ? new Failure('The circuit has no load: give its load in A, W or VA.', undefined, 'too-few-givens')
      : nameplateDemand(mca, mca);
  },
  device: (call, _load, demand) => {
    const found = smallestDeviceFor(tablesOf(call), demand.required);
    return found
      ? { rating: found.row.rating, because: `smallest standard rating that carries ${demand.because}` }
      : new Failure(
          `${figure(demand.required)} A is above the largest standard overcurrent device: split the load.`,
          'load',
          'no-standard-size',
        );
  },
  allows: (call, _load, rating, ampacity, sets) =>
    rating <= (largestDeviceAllowed(tablesOf(call), ampacity, sets) ?? 0),
};

/** Fixed electric space heating: continuous by rule. */
export const spaceHeating: KindOfCircuit = {
  ...general,
  kinds: ['space_heating'],
  continuousBy: '424.4(B), 424.3(B) before 2023',
};

/** Storage water heater: continuous by rule. */
export const waterHeater: KindOfCircuit = { ...general, kinds: ['water_heater'], continuousBy: '422.13' };

/** Electric vehicle supply equipment: continuous by rule. */
export const evse: KindOfCircuit = { ...general, kinds: ['evse'], continuousBy: 'Article 625' };
