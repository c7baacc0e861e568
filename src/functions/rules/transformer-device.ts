import { type Call, defineFormula, Failure } from '../../language';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { lastBits } from './last-bits';
import { smallestDeviceFor } from './next-standard-size';
import { shownRating } from './shown-rating';

/** How a sheet names the columns of the table. */
const columns = {
  primary_only: 'primary only',
  primary_with_secondary: 'primary and secondary: primary',
  secondary: 'primary and secondary: secondary',
} as const;
export type TransformerProtection = keyof typeof columns;
export const transformerProtections = Object.keys(columns) as TransformerProtection[];

const limit = defineFormula({ symbol: 'I_limit', text: 'k * I', units: { k: '%', I: 'A' }, result: 'A' });

/** Largest device, in amperes, for a transformer's rated current on the side of the device (NEC Table 450.3(B)). */
export function transformerDevice(call: Call, current: number, protection: TransformerProtection): number | Failure {
  const tables = tablesOf(call);
  const found = tables.transformerProtection(columns[protection], current);
  if (!found) {
    return new Failure('The transformer table has no row for that current.', 'current', 'not-in-table');
  }
  call.table({ symbol: 'k', value: found.row.percent, unit: '%', source: found.source, row: found.shown });
  const most = limit(call, { k: found.row.percent, I: current });
  const upwards = found.row.nextSizeUp === 'yes';
  const device = upwards ? smallestDeviceFor(tables, most) : tables.standardRatingAtMost(most * (1 + lastBits));
  if (!device) {
    return new Failure(
      `No standard rating fits ${figure(most)} A: choose a fuse by hand.`,
      'current',
      'no-standard-size',
    );
  }
  return shownRating(call, device, upwards ? 'next standard rating up allowed' : 'standard rating at or below');
}
