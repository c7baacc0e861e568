import { defineFormula, Failure } from '../../../language';
import { figure } from '../../number-text';
import { demandOf } from '../../rules/required-current';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

const least = defineFormula({ symbol: 'I_tap', text: 'I_n / k', units: { k: '', I_n: 'A' }, result: 'A' });

/** Feeder tap: a share of the device ahead by its length, and its own load (NEC 240.21(B)(1) and (2)). */
export const tap: KindOfCircuit = {
  kinds: ['tap'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  terminalsByDemand: true,
  demand: (call, { load, continuous, ocpd, length }) => {
    if (ocpd === undefined || length === undefined) {
      return new Failure(
        'A tap is sized by what it is tapped from: give the feeder’s device as ocpd, and the tap’s length.',
        undefined,
        'too-few-givens',
      );
    }
    const found = tablesOf(call).tapRule(length);
    if (!found) {
      return new Failure(
        `A tap of ${figure(length)} ft is longer than the 10 ft and 25 ft rules of 240.21(B) reach: put a device at its start, or size it by hand where it is outside or in a high-bay building.`,
        'length',
        'not-covered',
      );
    }
    call.assume('feeder tap taken, not a tap of a branch circuit, of a transformer’s secondary or of another tap');
    call.assume(found.row.condition);
    call.table({ symbol: 'k', value: found.row.divisor, unit: '', source: found.source, row: found.shown });
    const share = least(call, { k: found.row.divisor, I_n: ocpd });
    const own = load === undefined ? undefined : demandOf(call, load, continuous);
    if (own === undefined) {
      call.assume('load of the tap not given: it must be within the tap’s ampacity too');
    }
    return own && own.required > share
      ? own
      : {
          load: load ?? share,
          required: share,
          because: `${figure(ocpd)} A of the feeder’s device / ${found.row.divisor} = ${figure(share)} A (${found.source.table})`,
        };
  },
  device: () => new Failure('Give the feeder’s device as ocpd.', undefined, 'too-few-givens'),
  // The device ahead protects the tap against short circuits alone; its share is in the demand already.
  allows: () => true,
};
