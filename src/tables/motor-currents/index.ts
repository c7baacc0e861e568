import { eachRow, growsWithin } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import dc from './nec-2023-dc.json';
import singlePhase from './nec-2023-single-phase.json';
import threePhase from './nec-2023-three-phase.json';

const motorSupplies = ['dc', 'single-phase', 'three-phase'] as const;
export type MotorSupply = (typeof motorSupplies)[number];

export interface MotorCurrentRow {
  readonly supply: MotorSupply;
  /** The motor's rated voltage, not the system's: 460 V on a 480 V system. */
  readonly voltage: number;
  readonly horsepower: number;
  /** `7-1/2` */
  readonly printedHorsepower: string;
  readonly amperes: number;
}

const phaseFactor: Readonly<Record<MotorSupply, number>> = { dc: 1, 'single-phase': 1, 'three-phase': Math.sqrt(3) };

/** NEC Tables 430.247, 430.248 and 430.250: full-load currents that size conductors and short-circuit devices. */
export const motorCurrents: Subject<MotorCurrentRow> = {
  id: 'motor-currents',
  needed: true,
  columns: {
    supply: { label: 'supply', type: motorSupplies },
    voltage: { label: 'rated voltage, V', type: 'number', atLeast: 24, atMost: 15000 },
    horsepower: { label: 'rating, hp', type: 'number', atLeast: 0.01, atMost: 10000 },
    printedHorsepower: { label: 'rating as printed, hp', type: 'text' },
    amperes: { label: 'full-load current, A', type: 'number', atLeast: 0.1, atMost: 5000 },
  },
  key: ['supply', 'voltage', 'horsepower'],
  checks: [
    growsWithin('amperes', {
      group: (row) => `${row.supply} ${row.voltage}`,
      order: (row) => row.horsepower,
      value: (row) => row.amperes,
    }),
    // What goes in is more than what comes out (746 W/hp), and less than four times as much even for the smallest motor.
    eachRow('the current is that of a motor', 'amperes', (row) => {
      const into = row.amperes * row.voltage * phaseFactor[row.supply];
      const out = row.horsepower * 746;
      return into > out && into < 4.5 * out ? undefined : `${into} VA for ${out} W`;
    }),
  ],
  files: [dc as TableFile, singlePhase as TableFile, threePhase as TableFile],
};
