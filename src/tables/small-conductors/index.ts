import { rising } from '../checks';
import type { SmallConductorRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2020 from './nec-2020.json';
import nec2023 from './nec-2023.json';

const materials = ['Cu', 'Al', 'copper-clad aluminum'] as const;

/** Largest overcurrent device on 18 to 10 AWG, NEC 240.4(D). */
export const smallConductors: Subject<SmallConductorRow> = {
  id: 'small-conductors',
  needed: true,
  columns: {
    size: { label: 'size', type: 'size' },
    material: { label: 'material', type: materials },
    maxOcpd: { label: 'largest overcurrent device, A', type: 'number', atLeast: 1, atMost: 100 },
    condition: { label: 'condition', type: 'text', blank: true },
  },
  key: ['size', 'material'],
  checks: materials.map((material) =>
    rising<SmallConductorRow>('maxOcpd', (row) => (row.material === material ? row.maxOcpd : null), 'or stay'),
  ),
  files: [nec2020 as TableFile, nec2023 as TableFile],
};
