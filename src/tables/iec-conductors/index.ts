import { areaOf, eachRow, growsWithin } from '../checks';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import iec60228 from './iec-60228-2004.json';

const iecMaterials = ['Cu', 'coated Cu', 'Al'] as const;
const iecClasses = ['1', '2', '5'] as const;

export interface IecConductorRow {
  readonly size: string;
  readonly material: (typeof iecMaterials)[number];
  /** 1 solid, 2 stranded, 5 flexible. */
  readonly class: (typeof iecClasses)[number];
  readonly construction: 'solid' | 'stranded' | 'flexible';
  /** The most that a conductor may have at 20 °C; what is bought is lower. */
  readonly maxOhmPerKm: number;
}

/** IEC 60228: largest DC resistance at 20 °C by nominal area. The area is a name, the resistance the requirement. */
export const iecConductors: Subject<IecConductorRow> = {
  id: 'iec-conductors',
  needed: false,
  columns: {
    size: { label: 'nominal area', type: 'size' },
    material: { label: 'material', type: iecMaterials },
    class: { label: 'class', type: iecClasses },
    construction: { label: 'construction', type: ['solid', 'stranded', 'flexible'] },
    maxOhmPerKm: { label: 'largest Ω/km, DC, 20 °C', type: 'number', atLeast: 0.005, atMost: 100 },
  },
  key: ['size', 'material', 'class'],
  checks: [
    growsWithin('maxOhmPerKm', {
      group: (row) => `${row.material} ${row.class}`,
      order: (row) => areaOf(row.size),
      value: (row) => row.maxOhmPerKm,
      falls: true,
    }),
    // The nominal area is a name: 50 mm² copper has 47 mm² of metal, and class 5 allows for small strands.
    eachRow('resistance times nominal area is the metal’s, within the slack of the name', 'maxOhmPerKm', (row) => {
      const product = row.maxOhmPerKm * areaOf(row.size);
      const [low, high] = row.material === 'Al' ? [28, 33.5] : [17, 21];
      return product > low && product < high ? undefined : `${product} Ω·mm²/km`;
    }),
  ],
  files: [iec60228 as TableFile],
};
