import { areaOf, falling, near } from '../checks';
import type { WireTableRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nbsCircular31 from './nbs-circular-31.json';

/** Solid annealed copper at 20 °C by gauge, to four figures. */
export const wireTable: Subject<WireTableRow> = {
  id: 'wire-table',
  needed: false,
  columns: {
    size: { label: 'size', type: 'size' },
    diameterMils: { label: 'diameter, mil', type: 'number', atLeast: 1, atMost: 500 },
    areaCmil: { label: 'area, cmil', type: 'number', atLeast: 1, atMost: 250000 },
    ohmPerKft: { label: 'Ω/kft, annealed Cu, 20 °C', type: 'number', atLeast: 0.01, atMost: 10000 },
    poundsPerKft: { label: 'weight, lb/kft', type: 'number', blank: true, atLeast: 0.001, atMost: 1000 },
    diameterMilsB258: { label: 'diameter, mil, ASTM B258', type: 'number', blank: true, atLeast: 1, atMost: 500 },
  },
  key: ['size'],
  checks: [
    near(
      'areaCmil is the size',
      'areaCmil',
      (row) => row.areaCmil,
      (row) => areaOf(row.size) / 0.000506707,
      0.001,
    ),
    // Half of a printed diameter's last digit is up to 0.05 %, twice that in the square, and the area's own comes on top.
    near(
      'areaCmil is the square of diameterMils',
      'areaCmil',
      (row) => row.areaCmil,
      (row) => row.diameterMils ** 2,
      0.0015,
    ),
    near(
      'ohmPerKft times area is 10.371 Ω·cmil/ft',
      'ohmPerKft',
      (row) => row.ohmPerKft,
      (row) => 10371 / row.areaCmil,
      0.001,
    ),
    // 8.89 g/cm³ over one circular mil and 1000 ft.
    near(
      'poundsPerKft is area times density',
      'poundsPerKft',
      (row) => row.poundsPerKft,
      (row) => row.areaCmil * 0.0030269,
      0.001,
    ),
    falling('ohmPerKft', (row) => row.ohmPerKft),
  ],
  files: [nbsCircular31 as TableFile],
};
