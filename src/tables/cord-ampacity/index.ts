import { areaOf, eachRow, growsWithin } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface CordAmpacityRow {
  readonly size: string;
  /** Amperes with three and with two current-carrying conductors. */
  readonly threeA: number;
  readonly twoA: number;
}

/** NEC Table 400.5(A)(1): what flexible cords of copper may carry. */
export const cordAmpacity: Subject<CordAmpacityRow> = {
  id: 'cord-ampacity',
  needed: true,
  columns: {
    size: { label: 'size', type: 'size' },
    threeA: { label: 'A, three current-carrying conductors', type: 'number', atLeast: 1, atMost: 1000 },
    twoA: { label: 'A, two current-carrying conductors', type: 'number', atLeast: 1, atMost: 1000 },
  },
  key: ['size'],
  checks: [
    growsWithin('threeA', { group: () => '', order: (row) => areaOf(row.size), value: (row) => row.threeA }),
    growsWithin('twoA', { group: () => '', order: (row) => areaOf(row.size), value: (row) => row.twoA }),
    eachRow('two conductors carry more than three', 'twoA', (row) =>
      row.twoA > row.threeA ? undefined : `${row.twoA} beside ${row.threeA}`,
    ),
  ],
  files: [nec2023 as TableFile],
};
