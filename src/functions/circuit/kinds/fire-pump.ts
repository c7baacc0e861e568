import { type Call, Failure } from '../../../language';
import { figure } from '../../number-text';
import { lockedRotorCurrent } from '../../rules/locked-rotor';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { tablesOf } from '../../settings';
import type { CircuitLoad, DeviceChoice, KindOfCircuit } from './kind';
import { motor } from './motor';

const lockedRotor = (call: Call, { power, voltage, phases }: CircuitLoad): number | Failure | undefined =>
  power && voltage !== undefined && phases === 3
    ? lockedRotorCurrent(call, { power: power.value, voltage })
    : undefined;

/** The device holds the locked-rotor current for ever: it must never be what stops the pump. */
function device(call: Call, load: CircuitLoad): DeviceChoice | Failure {
  const locked = lockedRotor(call, load);
  if (locked === undefined) {
    return new Failure(
      'The device of a fire pump goes by its locked-rotor current: give the load in hp with voltage and phases: 3, or the ocpd that is fitted.',
      undefined,
      'too-few-givens',
    );
  }
  if (locked instanceof Failure) {
    return locked;
  }
  const found = smallestDeviceFor(tablesOf(call), locked);
  return found
    ? {
        rating: found.row.rating,
        because: `standard rating at or above the locked-rotor current of ${figure(locked)} A (695.4(B)(2))`,
      }
    : new Failure(`${figure(locked)} A is above the largest standard rating.`, 'load', 'no-standard-size');
}

/** Fire pump motor: conductors as for a motor, the device by its locked-rotor current (NEC 695.4, 695.6). */
export const firePump: KindOfCircuit = {
  ...motor,
  kinds: ['fire_pump'],
  demand: (call, load) => {
    call.assume(
      'this pump alone; drop limits of 695.7 (from memory: 15 % when it starts, 5 % at 115 % of its current) not checked',
    );
    if (load.power === undefined) {
      call.assume('device not held against the locked-rotor current: load not given in hp');
    }
    return motor.demand(call, load);
  },
  device,
  deviceBounds: (call, load) => {
    const locked = lockedRotor(call, load);
    return locked === undefined || locked instanceof Failure
      ? undefined
      : { section: '695.4(B)(2)', because: `locked-rotor current of ${figure(locked)} A`, least: locked };
  },
  // The device is there for short circuits alone, however large it is (240.4(A), 695.5).
  allows: () => true,
};
