import { falling } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface DryerDemandRow {
  readonly min: number;
  readonly max: number | null;
  /** For each dryer beyond `beyond`, `lessPerDryer` is taken off. */
  readonly percent: number;
  readonly lessPerDryer: number | null;
  readonly beyond: number | null;
}

/** NEC Table 220.54: demand of household dryers by their number. */
export const dryerDemand: Subject<DryerDemandRow> = {
  id: 'dryer-demand',
  needed: true,
  columns: {
    min: { label: 'dryers from', type: 'number', atLeast: 1, atMost: 10000 },
    max: { label: 'dryers to', type: 'number', blank: true, atLeast: 1, atMost: 10000 },
    percent: { label: '%', type: 'number', atLeast: 1, atMost: 100 },
    lessPerDryer: { label: '% less for each dryer', type: 'number', blank: true, atLeast: 0, atMost: 10 },
    beyond: { label: 'beyond', type: 'number', blank: true, atLeast: 1, atMost: 10000 },
  },
  key: ['min'],
  checks: [
    falling('percent', (row) => row.percent - (row.lessPerDryer ?? 0) * (row.min - (row.beyond ?? row.min)), 'or stay'),
  ],
  files: [nec2023 as TableFile],
};
