import { growsWithin } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface LockedRotorRow {
  readonly voltage: number;
  readonly horsepower: number;
  readonly amperes: number;
}

/** NEC Table 430.251(B): what a three-phase motor draws before it turns. */
export const lockedRotor: Subject<LockedRotorRow> = {
  id: 'locked-rotor',
  needed: true,
  columns: {
    voltage: { label: 'rated voltage, V', type: 'number', atLeast: 100, atMost: 15000 },
    horsepower: { label: 'rating, hp', type: 'number', atLeast: 0.1, atMost: 10000 },
    amperes: { label: 'locked-rotor current, A', type: 'number', atLeast: 1, atMost: 20000 },
  },
  key: ['voltage', 'horsepower'],
  checks: [
    growsWithin('amperes', {
      group: (row) => String(row.voltage),
      order: (row) => row.horsepower,
      value: (row) => row.amperes,
    }),
  ],
  files: [nec2023 as TableFile],
};
