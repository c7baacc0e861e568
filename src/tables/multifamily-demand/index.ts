import { falling } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface MultifamilyDemandRow {
  readonly min: number;
  readonly max: number | null;
  readonly percent: number;
}

/** NEC Table 220.84: demand of three or more dwelling units together, over their whole connected load. */
export const multifamilyDemand: Subject<MultifamilyDemandRow> = {
  id: 'multifamily-demand',
  needed: true,
  columns: {
    min: { label: 'units from', type: 'number', atLeast: 3, atMost: 10000 },
    max: { label: 'units to', type: 'number', blank: true, atLeast: 3, atMost: 10000 },
    percent: { label: '% of connected load', type: 'number', atLeast: 1, atMost: 100 },
  },
  key: ['min'],
  checks: [falling('percent', (row) => row.percent)],
  files: [nec2023 as TableFile],
};
