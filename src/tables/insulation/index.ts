import { eachRow } from '../checks';
import type { InsulationRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

/** Insulation and cable types: temperature ratings and the ampacity column to start from. */
export const insulation: Subject<InsulationRow> = {
  id: 'insulation',
  needed: true,
  columns: {
    type: { label: 'type', type: 'text' },
    insulation: { label: 'insulation', type: 'text' },
    ratingDryC: { label: 'rating, dry and damp, °C', type: 'number', atLeast: 60, atMost: 250 },
    ratingWetC: { label: 'rating, wet, °C', type: 'number', blank: true, atLeast: 60, atMost: 250 },
    columnDryC: { label: 'ampacity column, dry, °C', type: 'number', atLeast: 60, atMost: 90 },
    columnWetC: { label: 'ampacity column, wet, °C', type: 'number', blank: true, atLeast: 60, atMost: 90 },
    locations: { label: 'locations', type: 'text' },
    notes: { label: 'remarks', type: 'text', blank: true },
  },
  key: ['type'],
  checks: [
    eachRow('ampacity columns are 60, 75 or 90 °C', 'columnDryC', (row) =>
      [row.columnDryC, row.columnWetC ?? 60].every((c) => c === 60 || c === 75 || c === 90)
        ? undefined
        : `${row.columnDryC} and ${row.columnWetC}`,
    ),
    eachRow('no column is hotter than the rating', 'columnDryC', (row) =>
      row.columnDryC <= row.ratingDryC && (row.columnWetC ?? 0) <= (row.ratingWetC ?? 0)
        ? undefined
        : `column ${row.columnDryC} dry, ${row.columnWetC} wet`,
    ),
    eachRow('a wet place allows no more than a dry one', 'columnWetC', (row) =>
      (row.columnWetC ?? 0) <= row.columnDryC ? undefined : `${row.columnWetC} wet, ${row.columnDryC} dry`,
    ),
  ],
  files: [nec2023 as TableFile],
};
