import { falling, rising } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface RangeDemandRow {
  readonly min: number;
  readonly max: number | null;
  readonly percentA: number;
  readonly percentB: number;
  /** Column C in kW, with `kilowattsEach` more for each appliance where that is not null. */
  readonly kilowattsC: number;
  readonly kilowattsEach: number | null;
}

/** NEC Table 220.55: demand of household cooking appliances by their number. */
export const rangeDemand: Subject<RangeDemandRow> = {
  id: 'range-demand',
  needed: true,
  columns: {
    min: { label: 'appliances from', type: 'number', atLeast: 1, atMost: 10000 },
    max: { label: 'appliances to', type: 'number', blank: true, atLeast: 1, atMost: 10000 },
    percentA: { label: 'column A, %', type: 'number', atLeast: 1, atMost: 100 },
    percentB: { label: 'column B, %', type: 'number', atLeast: 1, atMost: 100 },
    kilowattsC: { label: 'column C, kW', type: 'number', atLeast: 1, atMost: 1000 },
    kilowattsEach: { label: 'column C, kW more for each', type: 'number', blank: true, atLeast: 0, atMost: 12 },
  },
  key: ['min'],
  checks: [
    falling('percentA', (row) => row.percentA, 'or stay'),
    falling('percentB', (row) => row.percentB, 'or stay'),
    rising('kilowattsC', (row) => row.kilowattsC + (row.kilowattsEach ?? 0) * row.min),
  ],
  files: [nec2023 as TableFile],
};
