import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';
import vehicles2023 from './nec-2023-vehicles.json';

export interface LoadRuleRow {
  /** `small-appliance circuit`, `optional method, over 10 kVA` … */
  readonly rule: string;
  readonly condition: string;
  readonly value: number;
  readonly unit: string;
}

/** Single figures of load calculations, mostly NEC Article 220, that stand in no table. */
export const loadRules: Subject<LoadRuleRow> = {
  id: 'load-rules',
  needed: true,
  columns: {
    rule: { label: 'rule', type: 'text' },
    condition: { label: 'condition', type: 'text' },
    value: { label: 'value', type: 'number', atLeast: 0, atMost: 1e5 },
    unit: { label: 'unit', type: ['VA', 'VA/ft', 'VA/ft²', 'A', '%', '×', 'h'] },
  },
  key: ['rule'],
  checks: [],
  files: [nec2023 as TableFile, vehicles2023 as TableFile],
};
