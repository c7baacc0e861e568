import { Failure } from '../../../language';
import { figure } from '../../number-text';
import { largestDeviceAllowed } from '../../rules/device-on-conductor';
import { demandOf } from '../../rules/required-current';
import { transformerDevice } from '../../rules/transformer-device';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** Primary circuit of a transformer of 1000 V and less: the device by Table 450.3(B), the conductor by that device. */
export const transformer: KindOfCircuit = {
  kinds: ['transformer'],
  askedIfContinuous: true,
  smallConductorLimits: true,
  demand: (call, { load, power, continuous }) =>
    load === undefined || power?.unit === 'W'
      ? new Failure(
          'A transformer is rated in VA: give its rating as load with the primary voltage, or its rated primary current in A.',
          load === undefined ? undefined : 'load',
          load === undefined ? 'too-few-givens' : 'wrong-power',
        )
      : demandOf(call, load, continuous),
  device: (call, { load = 0 }) => {
    call.assume('primary device alone protects the transformer; with a secondary device it may be up to 250 %');
    const rating = transformerDevice(call, load, 'primary_only');
    return rating instanceof Failure
      ? rating
      : { rating, because: `largest for a rated primary current of ${figure(load)} A, primary protection alone` };
  },
  deviceBounds: (call, { load = 0 }) => {
    const usual = transformerDevice(call, load, 'primary_only');
    const largest = transformerDevice(call, load, 'primary_with_secondary');
    return usual instanceof Failure || largest instanceof Failure
      ? undefined
      : {
          section: '450.3(B)',
          because: `rated primary current ${figure(load)} A`,
          usual,
          onlyWhere: 'its secondary has a device of its own, of at most 125 % of the rated secondary current',
          largest: Math.max(usual, largest),
        };
  },
  // The transformer’s rule does not protect the conductor: that goes by the general rule.
  allows: (call, _load, rating, ampacity, sets) =>
    rating <= (largestDeviceAllowed(tablesOf(call), ampacity, sets) ?? 0),
};
