import { defineFunction, Failure } from '../../language';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { smallestDeviceFor } from '../rules/next-standard-size';
import { demandOf } from '../rules/required-current';
import { shownRating } from '../rules/shown-rating';
import { tablesOf } from '../settings';

export const ocpd_for = defineFunction({
  name: 'ocpd_for',
  summary: 'Smallest standard overcurrent device that carries a load.',
  parameters: { current: shared.current, continuous: shared.continuous },
  result: { unit: 'A', meaning: 'standard rating of a breaker or fuse' },
  formula: 'I_n >= 1.25 * I',
  assumptions: ['not a motor or other load with its own device rule', 'device not listed for 100 % of its rating'],
  sources: ['NEC 240.6(A)', 'NEC 210.20(A)', 'NEC 215.3'],
  examples: [
    { text: 'ocpd_for(16 A, continuous: yes)', gives: '20 A' },
    { text: 'ocpd_for(43 A, continuous: yes)', gives: '60 A' },
    { text: 'ocpd_for(101 A)', gives: '110 A' },
  ],
  evaluate: (args, call) => {
    const { required, because } = demandOf(call, args.current, args.continuous);
    const device = smallestDeviceFor(tablesOf(call), required);
    if (!device) {
      return new Failure(
        `${figure(required)} A is above the largest standard rating: split the load.`,
        'current',
        'no-standard-size',
      );
    }
    return shownRating(call, device, `smallest standard rating not below ${because}`);
  },
});
