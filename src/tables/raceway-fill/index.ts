import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface RacewayFillRow {
  readonly case: 'raceway' | 'nipple';
  readonly min: number;
  readonly max: number | null;
  readonly percent: number;
}

/** NEC Chapter 9 Table 1 and its Note 4: how much of a raceway's area conductors may take. */
export const racewayFill: Subject<RacewayFillRow> = {
  id: 'raceway-fill',
  needed: true,
  columns: {
    case: { label: 'case', type: ['raceway', 'nipple'] },
    min: { label: 'conductors or cables from', type: 'number', atLeast: 1, atMost: 1000 },
    max: { label: 'conductors or cables to', type: 'number', blank: true, atLeast: 1, atMost: 1000 },
    percent: { label: 'largest fill, %', type: 'number', atLeast: 1, atMost: 100 },
  },
  key: ['case', 'min'],
  checks: [],
  files: [nec2023 as TableFile],
};
