import { eachRow } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

const welderTypes = ['arc', 'motor generator', 'resistance'] as const;

export interface WelderDutyRow {
  readonly welder: (typeof welderTypes)[number];
  /** Duty cycle in percent up to which the row holds. */
  readonly upToDuty: number;
  readonly multiplier: number;
}

/** NEC Tables 630.11(A) and 630.31(A): what part of its rated primary current a welder's conductors must carry. */
export const welderDuty: Subject<WelderDutyRow> = {
  id: 'welder-duty',
  needed: true,
  columns: {
    welder: { label: 'welder', type: welderTypes },
    upToDuty: { label: 'duty cycle up to, %', type: 'number', atLeast: 1, atMost: 100 },
    multiplier: { label: 'multiplier', type: 'number', atLeast: 0.1, atMost: 1 },
  },
  key: ['welder', 'upToDuty'],
  checks: [
    // What heats the wire is the square of the current over the duty cycle; a motor generator idles with some current.
    eachRow('the multiplier is about the root of the duty cycle', 'multiplier', ({ welder, upToDuty, multiplier }) => {
      const root = Math.sqrt(upToDuty / 100);
      const most = welder === 'motor generator' ? 0.11 : 0.006;
      return multiplier > root - 0.006 && multiplier < root + most ? undefined : `${multiplier} for ${root}`;
    }),
  ],
  files: [nec2023 as TableFile],
};
