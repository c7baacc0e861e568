import { type Call, Failure } from '../../../language';
import type { DeviceBounds } from '../../facts';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import {
  type DeviceWord,
  deviceNames,
  deviceWords,
  motorConductorAmpacity,
  motorDevice,
  motorDeviceCeiling,
} from '../../rules/motor-circuit';
import { motorCurrent } from '../../rules/motor-current';
import { unwatched } from '../../rules/unwatched';
import type { CircuitLoad, KindOfCircuit } from './kind';

/** Taken where the sheet does not say the device. */
const usualDevice: DeviceWord = 'breaker';

const question = ({ load = 0, phases, device = usualDevice }: CircuitLoad) => ({ tableCurrent: load, phases, device });

const ratingOr = (found: number | Failure): number => (found instanceof Failure ? Number.POSITIVE_INFINITY : found);

/** The largest first choice for a motor, in amperes: of its type of device, or of any where the type is not said. */
export const largestFirstChoice = (call: Call, load: CircuitLoad): number =>
  Math.max(...devicesOf(load).map((device) => ratingOr(motorDevice(call, { ...question(load), device }))));

const devicesOf = ({ device }: CircuitLoad): readonly DeviceWord[] => (device ? [device] : deviceWords);

function deviceBounds(call: Call, load: CircuitLoad): DeviceBounds {
  const ceilings = devicesOf(load).map((device) => ratingOr(motorDeviceCeiling(call, { ...question(load), device })));
  return {
    section: '430.52',
    because: `${load.device ? deviceNames[load.device] : 'any type of device'}, full-load current ${figure(load.load ?? 0)} A`,
    usual: largestFirstChoice(call, load),
    onlyWhere: 'the motor does not start on that',
    largest: Math.max(...ceilings),
  };
}

/** One motor: conductors at 125 % of the table current, the device by its own percentages (NEC 430.22, 430.52). */
export const motor: KindOfCircuit = {
  kinds: ['motor'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  currentOf: (call, { power, voltage, phases }) =>
    power.unit === 'W'
      ? motorCurrent(call, { power: power.value, voltage, phases })
      : new Failure(
          'A motor is rated by its output: give the load in hp or W, or its table full-load current in A.',
          'load',
          'wrong-power',
        ),
  demand: (call, { load }) => {
    if (load === undefined) {
      return new Failure(
        'The motor has no size: give its load in hp, or its table full-load current in A.',
        undefined,
        'too-few-givens',
      );
    }
    const required = motorConductorAmpacity(call, load);
    return required instanceof Failure
      ? required
      : { load: required, required, because: `full-load current ${figure(load)} A × 125 % = ${figure(required)} A` };
  },
  device: (call, load) => {
    if (load.device === undefined) {
      call.assume('inverse-time breaker taken: device not given');
    }
    const rating = motorDevice(call, question(load));
    return rating instanceof Failure
      ? rating
      : { rating, because: `largest first choice for a full-load current of ${figure(load.load ?? 0)} A (430.52)` };
  },
  deviceBounds,
  allows: (call, load, rating) => {
    const largest = motorDevice(unwatched(call), question(load));
    return !(largest instanceof Failure) && reaches(largest, rating);
  },
};
