import type { Tables } from '../../tables';
import type { AmpacityFact } from '../facts';
import { largestDeviceOn } from './next-standard-size';
import { smallConductorLimit } from './small-conductor';

/** The largest device, in amperes, that the general rule and the small-conductor rule allow on a conductor. */
export function largestDeviceAllowed(tables: Tables, ampacity: AmpacityFact, sets: number): number | undefined {
  const general = largestDeviceOn(tables, ampacity.ampacity * sets)?.row.rating;
  const small = smallConductorLimit(tables, ampacity.conductor)?.row.maxOcpd;
  return general !== undefined && small !== undefined ? Math.min(general, small) : general;
}
