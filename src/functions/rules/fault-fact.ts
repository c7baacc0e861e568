import type { Call } from '../../language';
import { leaveFact } from '../leave-fact';
import { tablesOf } from '../settings';

/** Leaves what fault current is available, and the interrupting rating that it is to be compared with; amperes. */
export function faultFact(call: Call, currentA: number, interruptingRatingA: number | undefined): void {
  if (call.watched) {
    leaveFact(call, { about: 'fault', currentA, interruptingRatingA, edition: tablesOf(call).edition });
  }
}
