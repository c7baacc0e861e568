import { areaOf, eachRow, rising } from '../checks';
import type { EquipmentGroundingRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

/** Smallest equipment grounding conductor by the rating of the overcurrent device ahead, NEC Table 250.122. */
export const equipmentGrounding: Subject<EquipmentGroundingRow> = {
  id: 'equipment-grounding',
  needed: true,
  columns: {
    ocpdNotOver: { label: 'overcurrent device not over, A', type: 'number', atLeast: 1, atMost: 10000 },
    Cu: { label: 'copper', type: 'size' },
    Al: { label: 'aluminum or copper-clad aluminum', type: 'size' },
  },
  key: ['ocpdNotOver'],
  checks: [
    rising('ocpdNotOver', (row) => row.ocpdNotOver),
    rising('Cu', (row) => areaOf(row.Cu), 'or stay'),
    rising('Al', (row) => areaOf(row.Al), 'or stay'),
    eachRow('aluminum is larger than copper', 'Al', (row) =>
      areaOf(row.Al) > areaOf(row.Cu) ? undefined : `${row.Al} beside ${row.Cu}`,
    ),
  ],
  files: [nec2023 as TableFile],
};
