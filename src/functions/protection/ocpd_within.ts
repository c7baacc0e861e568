import { defineFunction, Failure } from '../../language';
import { figure } from '../number-text';
import { lastBits } from '../rules/last-bits';
import { shownRating } from '../rules/shown-rating';
import { tablesOf } from '../settings';

export const ocpd_within = defineFunction({
  name: 'ocpd_within',
  summary: 'Largest standard overcurrent device that stays within a limit.',
  parameters: {
    limit: { unit: 'A', symbol: 'I_limit', above: 0, meaning: 'rating that must not be passed' },
    device: {
      choice: ['breaker', 'fuse'],
      named: true,
      default: 'breaker',
      meaning: 'type of the device; fuses have some smaller ratings of their own',
    },
  },
  result: { unit: 'A', meaning: 'standard rating' },
  formula: 'I_n <= I_limit',
  assumptions: ['for rules that round down, such as motor feeders, compressors and conductors above 800 A'],
  sources: ['NEC 240.6(A)'],
  examples: [
    { text: 'ocpd_within(190 A)', gives: '175 A' },
    { text: 'ocpd_within(1.75 * 24 A)', gives: '40 A' },
    { text: 'ocpd_within(5 A, device: fuse)', gives: '3 A' },
  ],
  evaluate: ({ limit, device }, call) => {
    const found = tablesOf(call).standardRatingAtMost(limit * (1 + lastBits), device);
    if (!found) {
      return new Failure(`No standard ${device} is rated ${figure(limit)} A or less.`, 'limit', 'no-standard-size');
    }
    return shownRating(call, found, 'largest standard rating within the limit');
  },
});
