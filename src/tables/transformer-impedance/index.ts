import { eachRow } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import typical from './typical.json';

export interface TransformerImpedanceRow {
  readonly transformer: string;
  readonly rating: string;
  readonly percentZ: { readonly low: number; readonly high: number };
  readonly percentX: number | null;
  readonly percentR: number | null;
}

/** Typical impedances, for planning; a fault current is worked out from the nameplate. */
export const transformerImpedance: Subject<TransformerImpedanceRow> = {
  id: 'transformer-impedance',
  needed: false,
  columns: {
    transformer: { label: 'transformer', type: 'text' },
    rating: { label: 'rating', type: 'text' },
    'percentZ.low': { label: '% Z, low', type: 'number', atLeast: 0.1, atMost: 30 },
    'percentZ.high': { label: '% Z, high', type: 'number', atLeast: 0.1, atMost: 30 },
    percentX: { label: '% X', type: 'number', blank: true, atLeast: 0, atMost: 30 },
    percentR: { label: '% R', type: 'number', blank: true, atLeast: 0, atMost: 30 },
  },
  key: ['transformer', 'rating'],
  checks: [
    // Each of the three is printed with two figures.
    eachRow('Z is the root of X² + R²', 'percentZ.low', ({ percentZ, percentX, percentR }) => {
      if (percentX === null || percentR === null) {
        return undefined;
      }
      const z = Math.hypot(percentX, percentR);
      return Math.abs(percentZ.low - z) <= 0.15 ? undefined : `${percentZ.low} for ${z}`;
    }),
  ],
  files: [typical as TableFile],
};
