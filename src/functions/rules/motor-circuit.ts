import { type Call, defineFormula, Failure } from '../../language';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { smallestDeviceFor } from './next-standard-size';

/** Overcurrent devices as a sheet names them, and as the motor table does. */
const deviceNames = {
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

/** Highest first setting of the overload relay (NEC 430.32(A)(1)). */
export const motorOverload = (call: Call, nameplateCurrent: number, serviceFactor: number): number | Failure =>
  byTable(call, nameplateCurrent, overloadCurrent, [
    'overload',
    serviceFactor >= 1.15 ? 'service factor 1.15 or more' : 'all other',
    'overload relay',
  ]);
