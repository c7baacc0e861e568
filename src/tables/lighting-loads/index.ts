import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2017 from './nec-2017.json';
import nec2020 from './nec-2020.json';
import nec2023 from './nec-2023.json';

export interface LightingLoadRow {
  readonly occupancy: string;
  readonly voltAmperesPerFt2: number;
  /** Since 2020 the unit loads other than dwellings hold the 125 % for continuous load already. */
  readonly continuousIncluded: 'yes' | 'no';
}

/** NEC Table 220.12, from 2023 Table 220.42(A): general lighting by floor area. Rebuilt in 2020. */
export const lightingLoads: Subject<LightingLoadRow> = {
  id: 'lighting-loads',
  needed: true,
  columns: {
    occupancy: { label: 'occupancy', type: 'text' },
    voltAmperesPerFt2: { label: 'unit load, VA/ft²', type: 'number', atLeast: 0.1, atMost: 50 },
    continuousIncluded: { label: '125 % included', type: ['yes', 'no'] },
  },
  key: ['occupancy'],
  checks: [],
  files: [nec2017 as TableFile, nec2020 as TableFile, nec2023 as TableFile],
};
