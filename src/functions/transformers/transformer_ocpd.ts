import { defineFormula, defineFunction, Failure } from '../../language';
import { figure } from '../number-text';
import { lastBits } from '../rules/last-bits';
import { smallestDeviceFor } from '../rules/next-standard-size';
import { tablesOf } from '../settings';

/** How a sheet names the columns of the table. */
const columns = {
  primary_only: 'primary only',
  primary_with_secondary: 'primary and secondary: primary',
  secondary: 'primary and secondary: secondary',
} as const;
const words = Object.keys(columns) as (keyof typeof columns)[];

const limit = defineFormula({ symbol: 'I_limit', text: 'k * I', units: { k: '%', I: 'A' }, result: 'A' });

export const transformer_ocpd = defineFunction({
  name: 'transformer_ocpd',
  summary: 'Largest overcurrent device for a transformer of 1000 V and less.',
  parameters: {
    current: { unit: 'A', symbol: 'I', above: 0, meaning: 'rated current on the side of the device' },
    protection: {
      choice: words,
      named: true,
      default: 'primary_only',
      meaning: 'primary device alone, primary device with one on the secondary, or that secondary device',
    },
  },
  result: { unit: 'A', meaning: 'largest standard rating' },
  formula: 'I_limit = k * I',
  assumptions: [
    'protects the transformer alone: its conductors need protection of their own',
    'standard breaker ratings; ratings that only fuses have are left out',
  ],
  sources: ['NEC Table 450.3(B)', 'NEC 240.6(A)'],
  examples: [
    { text: 'transformer_ocpd(36.08 A)', gives: '50 A' },
    { text: 'transformer_ocpd(36.08 A, protection: primary_with_secondary)', gives: '90 A' },
  ],
  evaluate: ({ current, protection }, call) => {
    const tables = tablesOf(call);
    const found = tables.transformerProtection(columns[protection], current);
    if (!found) {
      return new Failure('The transformer table has no row for that current.', 'current', 'not-in-table');
    }
    call.table({ symbol: 'k', value: found.row.percent, unit: '%', source: found.source, row: found.shown });
    const most = limit(call, { k: found.row.percent, I: current });
    const device =
      found.row.nextSizeUp === 'yes'
        ? smallestDeviceFor(tables, most)
        : tables.standardRatingAtMost(most * (1 + lastBits));
    if (!device) {
      return new Failure(
        `No standard rating fits ${figure(most)} A: choose a fuse by hand.`,
        'current',
        'no-standard-size',
      );
    }
    call.table({
      symbol: 'I_n',
      value: device.row.rating,
      unit: 'A',
      source: device.source,
      row: device.shown,
      remark: found.row.nextSizeUp === 'yes' ? 'next standard rating up allowed' : 'standard rating at or below',
    });
    return device.row.rating;
  },
});
