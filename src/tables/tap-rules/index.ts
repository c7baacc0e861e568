import { rising } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface TapRuleRow {
  readonly maxLengthFt: number;
  /** Least ampacity of the tap, in percent of the device ahead of the feeder. */
  readonly percent: number;
  readonly condition: string;
}

/** NEC 240.21(B)(1) and (2): how much of the feeder's device a tap must carry, by its length. */
export const tapRules: Subject<TapRuleRow> = {
  id: 'tap-rules',
  needed: true,
  columns: {
    maxLengthFt: { label: 'length up to, ft', type: 'number', atLeast: 1, atMost: 1000 },
    percent: { label: '% of the feeder’s device', type: 'number', atLeast: 1, atMost: 100 },
    condition: { label: 'condition', type: 'text' },
  },
  key: ['maxLengthFt'],
  checks: [rising('percent', (row) => row.percent)],
  files: [nec2023 as TableFile],
};
