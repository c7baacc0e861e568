import { type Call, defineFormula, Failure } from '../../language';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { lastBits } from './last-bits';
import { smallestDeviceFor } from './next-standard-size';

/** Overcurrent devices as a sheet names them, and as the motor table does. */
export const deviceNames = {
  breaker: 'inverse-time breaker',
  fuse: 'nontime-delay fuse',
  time_delay_fuse: 'dual-element fuse',
} as const;
export type DeviceWord = keyof typeof deviceNames;
/** Motors by their rotor; the table allows a wound one less. */
export const rotorWords = ['squirrel_cage', 'wound_rotor'] as const;
export type RotorWord = (typeof rotorWords)[number];
export const deviceWords = ['breaker', 'fuse', 'time_delay_fuse'] as const satisfies readonly DeviceWord[];

const percentOfCurrent = (symbol: string) =>
  defineFormula({ symbol, text: 'k * I', units: { k: '%', I: 'A' }, result: 'A' });
const conductorCurrent = percentOfCurrent('I_required');
const deviceCurrent = percentOfCurrent('I_device');
const overloadCurrent = percentOfCurrent('I_overload');

type Key = readonly [category: string, motor: string, part: string];

/** A percentage of the motor table, shown with its row. */
function percentOf(call: Call, key: Key): number | Failure {
  const found = tablesOf(call).motorProtection(...key);
  if (!found) {
    return new Failure(`The motor table has no row for ${key.join(', ')}.`, undefined, 'not-in-table');
  }
  call.table({ symbol: 'k', value: found.row.percent, unit: '%', source: found.source, row: found.shown });
  return found.row.percent;
}

/** A percentage of the motor table taken of a current. */
function byTable(call: Call, current: number, formula: typeof conductorCurrent, key: Key): number | Failure {
  const k = percentOf(call, key);
  return k instanceof Failure ? k : formula(call, { k, I: current });
}

/** Per cent of the largest motor's current that a feeder of several must carry (NEC 430.24). */
export const feederPercent = (call: Call): number | Failure =>
  percentOf(call, ['conductor', 'several motors', 'feeder conductor']);

/** Least ampacity of a motor's branch-circuit conductors (NEC 430.22). */
export const motorConductorAmpacity = (call: Call, tableCurrent: number): number | Failure =>
  byTable(call, tableCurrent, conductorCurrent, ['conductor', 'continuous duty', 'branch conductor']);

/** Largest first choice of the short-circuit device: the table's percentage, next standard rating up (NEC 430.52). */
export function motorDevice(
  call: Call,
  motor: {
    readonly tableCurrent: number;
    readonly phases: number;
    readonly device: DeviceWord;
    readonly rotor?: RotorWord;
  },
): number | Failure {
  const kind = motor.rotor === 'wound_rotor' ? 'wound rotor' : motor.phases === 3 ? 'polyphase' : 'single-phase';
  const limit = byTable(call, motor.tableCurrent, deviceCurrent, ['branch device', kind, deviceNames[motor.device]]);
  if (limit instanceof Failure) {
    return limit;
  }
  return (
    smallestDeviceFor(tablesOf(call), limit)?.row.rating ??
    new Failure(`${figure(limit)} A is above the largest standard rating.`, undefined, 'no-standard-size')
  );
}

/** Fuses above this rating, in amperes, have a lower ceiling. */
const largeFuse = 600;
/** Above this table current, in amperes, a breaker has a lower ceiling. */
const largeMotor = 100;

/**
 * Largest device of all, in amperes, for a motor that does not start on the first choice (NEC 430.52(C)(1) Exception 2);
 * nothing is rounded up, and nothing below the first choice.
 */
export function motorDeviceCeiling(
  call: Call,
  motor: { readonly tableCurrent: number; readonly phases: number; readonly device: DeviceWord },
): number | Failure {
  const { tableCurrent, device } = motor;
  const ceiling = (size: string, name: string) =>
    byTable(call, tableCurrent, deviceCurrent, ['branch device ceiling', size, name]);
  const first = motorDevice(call, motor);
  const most = ceiling(
    device === 'breaker' ? (tableCurrent > largeMotor ? 'over 100 A' : '100 A or less') : 'any',
    deviceNames[device],
  );
  const ofLargeFuse = ceiling('any', 'fuse over 600 A');
  if (first instanceof Failure || most instanceof Failure || ofLargeFuse instanceof Failure) {
    return [first, most, ofLargeFuse].find((found) => found instanceof Failure) as Failure;
  }
  const limit = device === 'breaker' ? most : Math.min(most, Math.max(largeFuse, ofLargeFuse));
  return Math.max(first, tablesOf(call).standardRatingAtMost(limit * (1 + lastBits))?.row.rating ?? first);
}

/** Highest first setting of the overload relay (NEC 430.32(A)(1)). */
export const motorOverload = (call: Call, nameplateCurrent: number, serviceFactor: number): number | Failure =>
  byTable(call, nameplateCurrent, overloadCurrent, [
    'overload',
    serviceFactor >= 1.15 ? 'service factor 1.15 or more' : 'all other',
    'overload relay',
  ]);
