import { areaOf, eachRow, rising } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface DwellingServiceRow {
  readonly rating: number;
  readonly Cu: string;
  readonly Al: string;
}

/** NEC Table 310.12(A): conductors for the entire load of one dwelling, single-phase. From 2020 on. */
export const dwellingServices: Subject<DwellingServiceRow> = {
  id: 'dwelling-services',
  needed: false,
  columns: {
    rating: { label: 'service or feeder rating, A', type: 'number', atLeast: 15, atMost: 1000 },
    Cu: { label: 'copper', type: 'size' },
    Al: { label: 'aluminum or copper-clad aluminum', type: 'size' },
  },
  key: ['rating'],
  checks: [
    rising('Cu', (row) => areaOf(row.Cu)),
    rising('Al', (row) => areaOf(row.Al)),
    eachRow('aluminum is larger than copper', 'Al', (row) =>
      areaOf(row.Al) > areaOf(row.Cu) ? undefined : `${row.Al} beside ${row.Cu}`,
    ),
  ],
  files: [nec2023 as TableFile],
};
