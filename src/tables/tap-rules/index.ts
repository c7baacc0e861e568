import { falling } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface TapRuleRow {
  readonly maxLengthFt: number;
  /** The tap carries at least the rating of the device ahead of the feeder, divided by this. */
  readonly divisor: number;
  readonly condition: string;
}

/** NEC 240.21(B)(1) and (2): how much of the feeder's device a tap must carry, by its length. */
export const tapRules: Subject<TapRuleRow> = {
  id: 'tap-rules',
  needed: true,
  columns: {
    maxLengthFt: { label: 'length up to, ft', type: 'number', atLeast: 1, atMost: 1000 },
    divisor: { label: 'device’s rating divided by', type: 'number', atLeast: 1, atMost: 100 },
    condition: { label: 'condition', type: 'text' },
  },
  key: ['maxLengthFt'],
  checks: [falling('divisor', (row) => row.divisor)],
  files: [nec2023 as TableFile],
};
