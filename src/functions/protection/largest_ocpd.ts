import { defineFunction, Failure } from '../../language';
import { conductorText } from '../conductor';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { ampacityChain } from '../rules/ampacity-chain';
import { largestDeviceOn, roundUpEndsAt } from '../rules/next-standard-size';
import { smallConductorLimit } from '../rules/small-conductor';
import { tablesOf } from '../settings';

export const largest_ocpd = defineFunction({
  name: 'largest_ocpd',
  summary: 'Largest standard overcurrent device that the general rule allows on a conductor.',
  parameters: {
    conductor: shared.conductor,
    insulation: shared.insulation,
    terminals: shared.terminals,
    ambient: shared.ambient,
    bundled: shared.bundled,
  },
  result: { unit: 'A', meaning: 'standard rating of a breaker or fuse' },
  assumptions: [
    'next standard size up allowed to 800 A: not for a branch circuit that feeds several receptacles for cord-and-plug loads',
    'no motor, hvac, welder, tap or other load with its own device rule',
    'the load must still be within the ampacity itself',
  ],
  sources: ['NEC 240.4(B), (C) and (D)', 'NEC 240.6(A)'],
  examples: [
    { text: 'largest_ocpd(8 AWG Cu THHN, terminals: 75 °C)', gives: '50 A' },
    { text: 'largest_ocpd(6 AWG Cu THHN)', gives: '60 A' },
    { text: 'largest_ocpd(12 AWG Cu THHN, terminals: 75 °C)', gives: '20 A' },
  ],
  evaluate: (args, call) => {
    const tables = tablesOf(call);
    const allowed = ampacityChain(call, args);
    if (allowed instanceof Failure) {
      return allowed;
    }
    const device = largestDeviceOn(tables, allowed.ampacity);
    if (!device) {
      return new Failure(
        `${conductorText(args.conductor)} is allowed ${figure(allowed.ampacity)} A here, and no standard rating fits that.`,
        'conductor',
        'no-standard-size',
      );
    }
    call.table({
      value: device.row.rating,
      unit: 'A',
      source: device.source,
      row: device.shown,
      remark:
        allowed.ampacity <= roundUpEndsAt
          ? 'the standard rating at or next above the ampacity'
          : 'over 800 A: the standard rating at or below the ampacity',
    });
    const small = smallConductorLimit(tables, args.conductor);
    if (!small || small.row.maxOcpd >= device.row.rating) {
      return device.row.rating;
    }
    call.table({
      value: small.row.maxOcpd,
      unit: 'A',
      source: small.source,
      row: small.shown,
      remark: 'limit of the small-conductor rule',
    });
    return small.row.maxOcpd;
  },
});
