import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface MotorProtectionRow {
  /** `branch device`, `branch device ceiling`, `overload`, `conductor` … */
  readonly category: string;
  /** Kind of motor or case. */
  readonly motor: string;
  readonly device: string;
  readonly percent: number;
  /** The current that the percentage is taken of. */
  readonly of: string;
}

/** NEC 430.22 to 430.110 and 440.22: percentages for the parts of a motor circuit. */
export const motorProtection: Subject<MotorProtectionRow> = {
  id: 'motor-protection',
  needed: true,
  columns: {
    category: { label: 'for', type: 'text' },
    motor: { label: 'motor or case', type: 'text' },
    device: { label: 'part', type: 'text' },
    percent: { label: '%', type: 'number', atLeast: 100, atMost: 2000 },
    of: { label: 'of', type: 'text' },
  },
  key: ['category', 'motor', 'device'],
  checks: [
    {
      promise: 'a ceiling is above the first rating of its device',
      broken: (rows) =>
        rows.flatMap((row) => {
          const first = rows.find(
            (other) =>
              `${other.category} ceiling` === row.category && other.device === row.device && other.motor === row.motor,
          );
          return first && first.percent >= row.percent
            ? [{ row, beside: first, column: 'percent', found: `${row.percent} against ${first.percent}` }]
            : [];
        }),
    },
  ],
  files: [nec2023 as TableFile],
};
