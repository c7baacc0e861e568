import { falling, rising } from '../checks';
import type { BundlingRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

/** Per cent of the ampacity left when more than three current-carrying conductors run together. */
export const bundling: Subject<BundlingRow> = {
  id: 'bundling',
  needed: true,
  columns: {
    min: { label: 'conductors from', type: 'number', atLeast: 1, atMost: 1000 },
    max: { label: 'conductors to', type: 'number', blank: true, atLeast: 1, atMost: 1000 },
    percent: { label: '% of ampacity', type: 'number', atLeast: 1, atMost: 100 },
  },
  key: ['min'],
  checks: [
    rising('min', (row) => row.min),
    rising('max', (row) => row.max),
    falling('percent', (row) => row.percent),
    {
      promise: 'each range starts where the one before it ends',
      broken: (rows) =>
        rows.flatMap((row, i) => {
          const before = rows[i - 1]?.max;
          return i === 0 || before === row.min - 1 ? [] : [{ row, column: 'min', found: `${row.min} after ${before}` }];
        }),
    },
  ],
  files: [nec2023 as TableFile],
};
