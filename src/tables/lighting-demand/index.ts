import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2017 from './nec-2017.json';
import nec2023 from './nec-2023.json';

export interface LightingDemandRow {
  readonly occupancy: string;
  /** The step of the load that the percentage applies to; null for no upper end. */
  readonly overVA: number;
  readonly toVA: number | null;
  readonly percent: number;
}

/** NEC Table 220.42, from 2023 Table 220.45: demand factors of lighting load, step by step. */
export const lightingDemand: Subject<LightingDemandRow> = {
  id: 'lighting-demand',
  needed: true,
  columns: {
    occupancy: { label: 'occupancy', type: 'text' },
    overVA: { label: 'over, VA', type: 'number', atLeast: 0, atMost: 1e9 },
    toVA: { label: 'to, VA', type: 'number', blank: true, atLeast: 0, atMost: 1e9 },
    percent: { label: 'demand, %', type: 'number', atLeast: 1, atMost: 100 },
  },
  key: ['occupancy', 'overVA'],
  checks: [
    {
      promise: 'each step starts where the one before it ends, and demands less',
      broken: (rows) =>
        rows.flatMap((row, i) => {
          const beside = rows[i - 1];
          if (beside?.occupancy !== row.occupancy) {
            return row.overVA === 0 ? [] : [{ row, column: 'overVA', found: `the first step starts at ${row.overVA}` }];
          }
          return beside.toVA === row.overVA && beside.percent > row.percent
            ? []
            : [{ row, beside, column: 'overVA', found: `${row.overVA} after ${beside.toVA}` }];
        }),
    },
  ],
  files: [nec2017 as TableFile, nec2023 as TableFile],
};
