import { areaOf, eachRow, falling, near, rising } from '../checks';
import type { ConductorProperties, Stranding } from '../contract';
import type { Column, Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

type Read = (row: ConductorProperties) => number | null;

const resistance = (label: string): Column => ({ label, type: 'number', atLeast: 0.001, atMost: 100 });
const of =
  (stranding: Stranding, read: Read): Read =>
  (row) =>
    row.stranding === stranding ? read(row) : null;

const metals = ['Cu', 'coatedCu', 'Al'] as const;
const ftPerKm = 1000 / 0.3048;

/** NEC Chapter 9 Table 8: what a bare conductor is made of and its DC resistance at 75 °C. */
export const conductorProperties: Subject<ConductorProperties> = {
  id: 'conductor-properties',
  needed: true,
  columns: {
    size: { label: 'size', type: 'size' },
    stranding: { label: 'stranding', type: ['solid', 'stranded'] },
    areaCmil: { label: 'area, cmil', type: 'number', atLeast: 100, atMost: 5e6 },
    areaMm2: { label: 'area, mm²', type: 'number', atLeast: 0.05, atMost: 2600 },
    strands: { label: 'strands', type: 'number', atLeast: 1, atMost: 1000 },
    strandDiameterMm: { label: 'strand diameter, mm', type: 'number', blank: true, atLeast: 0.05, atMost: 10 },
    strandDiameterIn: { label: 'strand diameter, in', type: 'number', blank: true, atLeast: 0.002, atMost: 0.4 },
    overallDiameterMm: { label: 'overall diameter, mm', type: 'number', atLeast: 0.1, atMost: 100 },
    overallDiameterIn: { label: 'overall diameter, in', type: 'number', atLeast: 0.004, atMost: 4 },
    overallAreaIn2: { label: 'overall area, in²', type: 'number', atLeast: 0.0001, atMost: 10 },
    'ohmPerKft.Cu': resistance('Ω/kft, uncoated Cu, 75 °C'),
    'ohmPerKft.coatedCu': resistance('Ω/kft, coated Cu, 75 °C'),
    'ohmPerKft.Al': resistance('Ω/kft, Al, 75 °C'),
    'ohmPerKm.Cu': resistance('Ω/km, uncoated Cu, 75 °C'),
    'ohmPerKm.coatedCu': resistance('Ω/km, coated Cu, 75 °C'),
    'ohmPerKm.Al': resistance('Ω/km, Al, 75 °C'),
  },
  key: ['size', 'stranding'],
  checks: [
    // Circular mils are nominal to four figures; 18 and 16 AWG are printed with three.
    near(
      'areaCmil is the size',
      'areaCmil',
      (row) => row.areaCmil,
      (row) => areaOf(row.size) / 0.000506707,
      0.003,
    ),
    near(
      'areaMm2 is areaCmil',
      'areaMm2',
      (row) => row.areaMm2,
      (row) => row.areaCmil * 0.000506707,
      0.005,
    ),
    ...(['solid', 'stranded'] as const).flatMap((stranding) => [
      rising(
        `areaCmil, ${stranding}`,
        of(stranding, (row) => row.areaCmil),
      ),
      rising(
        `overallDiameterIn, ${stranding}`,
        of(stranding, (row) => row.overallDiameterIn),
      ),
      ...metals.map((metal) =>
        falling(
          `ohmPerKft.${metal}`,
          of(stranding, (row) => row.ohmPerKft[metal]),
        ),
      ),
    ]),
    // Both columns are rounded on their own, to as few as three figures.
    ...metals.map((metal) =>
      near<ConductorProperties>(
        `ohmPerKm.${metal} is ohmPerKft.${metal}`,
        `ohmPerKm.${metal}`,
        (row) => row.ohmPerKm[metal],
        (row) => (row.ohmPerKft[metal] * ftPerKm) / 1000,
        0.0075,
      ),
    ),
    // Resistance times area is the metal's resistivity: 12.9 Ω·cmil/ft for stranded copper at 75 °C, 21.2 for aluminum.
    near(
      'ohmPerKft.Cu times area',
      'ohmPerKft.Cu',
      (row) => row.ohmPerKft.Cu,
      (row) => 12.75e3 / row.areaCmil,
      0.03,
    ),
    near(
      'ohmPerKft.Al times area',
      'ohmPerKft.Al',
      (row) => row.ohmPerKft.Al,
      (row) => 21.1e3 / row.areaCmil,
      0.03,
    ),
    eachRow('uncoated copper is below coated copper, coated copper below aluminum', 'ohmPerKft.Cu', (row) =>
      row.ohmPerKft.Cu < row.ohmPerKft.coatedCu && row.ohmPerKft.coatedCu < row.ohmPerKft.Al
        ? undefined
        : `${row.ohmPerKft.Cu}, ${row.ohmPerKft.coatedCu}, ${row.ohmPerKft.Al}`,
    ),
  ],
  files: [nec2023 as TableFile],
};
