import { eachRow, falling, rising } from '../checks';
import type { AmbientCorrectionRow, TemperatureColumn } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

const temperatures: readonly TemperatureColumn[] = [60, 75, 90];

/** Correction of 30 °C ampacities for another ambient temperature. An empty factor: not permitted at that ambient. */
export const ambientCorrection: Subject<AmbientCorrectionRow> = {
  id: 'ambient-correction',
  needed: true,
  columns: {
    minC: { label: 'ambient from, °C', type: 'number', blank: true, atLeast: -100, atMost: 150 },
    maxC: { label: 'ambient to, °C', type: 'number', atLeast: -100, atMost: 150 },
    minF: { label: 'ambient from, °F', type: 'number', blank: true, atLeast: -150, atMost: 300 },
    maxF: { label: 'ambient to, °F', type: 'number', blank: true, atLeast: -150, atMost: 300 },
    ...Object.fromEntries(
      temperatures.map((temperature) => [
        `factor.${temperature}`,
        {
          label: `factor, ${temperature} °C conductor`,
          type: 'number',
          blank: true,
          atLeast: 0.05,
          atMost: 2,
        } as const,
      ]),
    ),
  },
  key: ['maxC'],
  checks: [
    rising('maxC', (row) => row.maxC),
    eachRow('minC lies below maxC', 'minC', (row) =>
      row.minC === null || row.minC <= row.maxC ? undefined : `${row.minC} to ${row.maxC}`,
    ),
    ...temperatures.map((t) => falling<AmbientCorrectionRow>(`factor.${t}`, (row) => row.factor[t])),
    // The conductor's temperature rise goes with the square of its current: at the warm end of each range the factor is
    // the root of what is left of the rise, to the two figures printed.
    ...temperatures.map((t) =>
      eachRow<AmbientCorrectionRow>('factor follows the temperature rise left', `factor.${t}`, ({ maxC, factor }) => {
        const printed = factor[t];
        const derived = Math.sqrt((t - maxC) / (t - 30));
        return printed === null || Math.abs(printed - derived) <= 0.006
          ? undefined
          : `${printed} where ${derived} follows`;
      }),
    ),
  ],
  files: [nec2023 as TableFile],
};
