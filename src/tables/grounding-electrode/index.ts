import type { Subject } from '../subject';
import { type SupplyConductorRow, supplyConductorChecks, supplyConductorColumns } from '../supply-conductor-row';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

/** NEC Table 250.66: grounding electrode conductor by the supply conductor. Caps of 250.66(A) to (C) are not in it. */
export const groundingElectrode: Subject<SupplyConductorRow> = {
  id: 'grounding-electrode',
  needed: true,
  columns: supplyConductorColumns,
  key: ['copperRange'],
  checks: supplyConductorChecks(),
  files: [nec2023 as TableFile],
};
