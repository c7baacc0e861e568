import type { Subject } from '../subject';
import { type SupplyConductorRow, supplyConductorChecks, supplyConductorColumns } from '../supply-conductor-row';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface SupplyBondingRow extends SupplyConductorRow {
  /** Where no size is printed: per cent of the ungrounded conductors' area. */
  readonly percentOfArea: number | null;
}

/** NEC Table 250.102(C)(1): grounded conductor, main, system and supply-side bonding jumper. */
export const supplyBonding: Subject<SupplyBondingRow> = {
  id: 'supply-bonding',
  needed: true,
  columns: {
    ...supplyConductorColumns,
    percentOfArea: { label: '% of the ungrounded area', type: 'number', blank: true, atLeast: 1, atMost: 100 },
  },
  key: ['copperRange'],
  checks: supplyConductorChecks(),
  files: [nec2023 as TableFile],
};
