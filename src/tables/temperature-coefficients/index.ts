import { near } from '../checks';
import type { TemperatureCoefficientRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import iec60028 from './iec-60028.json';
import nec2023 from './nec-2023.json';
import resistanceMaterials from './resistance-materials.json';

/** Resistivity, temperature coefficient and hot-to-cold ratio. Sources differ, so one material may have several rows. */
export const temperatureCoefficients: Subject<TemperatureCoefficientRow> = {
  id: 'temperature-coefficients',
  needed: true,
  columns: {
    material: { label: 'material', type: 'text' },
    grade: { label: 'grade', type: 'text', blank: true },
    referenceC: { label: 'reference, °C', type: 'number', atLeast: -50, atMost: 100 },
    alphaPerC: { label: 'α, 1/°C', type: 'number', blank: true, atLeast: -0.001, atMost: 0.01 },
    resistivityOhmM: { label: 'resistivity, Ω·m', type: 'number', blank: true, atLeast: 1e-8, atMost: 1e-5 },
    resistivityOhmCmilPerFt: { label: 'resistivity, Ω·cmil/ft', type: 'number', blank: true, atLeast: 5, atMost: 5000 },
    hotC: { label: 'hot, °C', type: 'number', blank: true, atLeast: 50, atMost: 3500 },
    hotToColdRatio: { label: 'hot to 20 °C resistance', type: 'number', blank: true, atLeast: 0.5, atMost: 30 },
  },
  key: ['material', 'referenceC', 'hotC', 'source'],
  checks: [
    // 1 Ω·cmil/ft is 1.66243e-9 Ω·m.
    near(
      'both resistivities agree',
      'resistivityOhmCmilPerFt',
      (row) => row.resistivityOhmCmilPerFt,
      (row) => (row.resistivityOhmM === null ? null : row.resistivityOhmM / 1.66243e-9),
      0.001,
    ),
  ],
  files: [iec60028 as TableFile, nec2023 as TableFile, resistanceMaterials as TableFile],
};
