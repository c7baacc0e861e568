import { areaOf, eachRow, growsWithin } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface InsulatedAreaRow {
  /** Insulation types of these dimensions, parted by spaces; `*` marks one without an outer covering. */
  readonly types: string;
  readonly size: string;
  readonly diameterIn: number;
  readonly areaIn2: number;
}

/** NEC Chapter 9 Table 5: outside dimensions of insulated conductors, for raceway fill. */
export const insulatedAreas: Subject<InsulatedAreaRow> = {
  id: 'insulated-areas',
  needed: true,
  columns: {
    types: { label: 'types', type: 'text' },
    size: { label: 'size', type: 'size' },
    diameterIn: { label: 'diameter, in', type: 'number', atLeast: 0.03, atMost: 5 },
    areaIn2: { label: 'area, in²', type: 'number', atLeast: 0.001, atMost: 20 },
  },
  key: ['types', 'size'],
  checks: [
    // The diameter has three decimals: half a unit of the last one is 0.5 % of the smallest diameter, 1 % of its area.
    eachRow('the area is that of the diameter', 'areaIn2', ({ diameterIn: d, areaIn2 }) => {
      const circle = (Math.PI / 4) * d ** 2;
      return Math.abs(areaIn2 - circle) <= 0.0008 * d + 0.0001 ? undefined : `${areaIn2} for ${circle}`;
    }),
    growsWithin('areaIn2', {
      group: (row) => row.types,
      order: (row) => areaOf(row.size),
      value: (row) => row.areaIn2,
    }),
    eachRow('the area holds the metal', 'areaIn2', (row) =>
      row.areaIn2 * 645.16 > areaOf(row.size) ? undefined : `${row.areaIn2} in² around ${row.size}`,
    ),
  ],
  files: [nec2023 as TableFile],
};
