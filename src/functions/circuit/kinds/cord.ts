import { Failure } from '../../../language';
import { figure } from '../../number-text';
import { cordAmpacity } from '../../rules/cord-ampacity';
import { reaches } from '../../rules/last-bits';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { demandOf } from '../../rules/required-current';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** A branch circuit of this rating may feed any extension cord of 16 AWG or larger that is put together in the field. */
const extensionCordDevice = 20;
/** Area of 16 AWG, in mm². */
const extensionCordMm2 = 1.3;
/** Fixture wire of 18 AWG may be this long, in feet, on the same branch circuit. */
const fixtureWireFt = 50;
/** The smallest branch circuit with receptacles, in amperes. */
const smallestReceptacleCircuit = 15;

/** Flexible cord: its own ampacity table, and a device as NEC 240.5 allows it. */
export const cord: KindOfCircuit = {
  kinds: ['cord'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  ampacityOf: (call, question, { phases }) => cordAmpacity(call, question, phases),
  demand: (call, { load, continuous }) =>
    load === undefined
      ? new Failure('The cord has no load: give its load in A, W or VA.', undefined, 'too-few-givens')
      : demandOf(call, load, continuous),
  device: (call, _load, demand) => {
    call.assume('extension cord made up in the field taken; a listed cord set or appliance cord goes by its listing');
    const found = smallestDeviceFor(tablesOf(call), Math.max(demand.required, smallestReceptacleCircuit));
    return found
      ? { rating: found.row.rating, because: `smallest receptacle circuit that carries ${demand.because}` }
      : new Failure(`${figure(demand.required)} A is more than a cord carries.`, 'load', 'no-standard-size');
  },
  deviceBounds: (call, { length }, { ampacity, conductor }, sets) => {
    const byTable = tablesOf(call).standardRatingAtMost(ampacity * sets)?.row.rating ?? ampacity * sets;
    const extension = conductor.size.mm2 >= extensionCordMm2 || (length !== undefined && length <= fixtureWireFt);
    return {
      section: '240.5',
      because: `a cord that may carry ${figure(ampacity * sets)} A; ${extensionCordDevice} A before an extension cord of 16 AWG or larger made up in the field, or at most ${fixtureWireFt} ft of fixture wire`,
      usual: extension ? Math.max(byTable, extensionCordDevice) : byTable,
      onlyWhere: 'the listing of the cord set or of the appliance allows it',
    };
  },
  allows: (_call, _load, rating, ampacity, sets) =>
    reaches(ampacity.ampacity * sets, rating) ||
    (rating <= extensionCordDevice && ampacity.conductor.size.mm2 >= extensionCordMm2),
};
