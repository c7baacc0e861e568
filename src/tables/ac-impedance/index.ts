import { eachRow, falling, near } from '../checks';
import type { Material } from '../contract';
import type { Column, Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export const conduits = ['PVC', 'aluminum', 'steel'] as const;
export type Conduit = (typeof conduits)[number];

type ByConduit = { readonly [C in Conduit]: number | null };
type ByMetal = { readonly [M in Material]: ByConduit };

/** Per conductor, to neutral, at 75 °C and 60 Hz. Reactance is the same in PVC and aluminum conduit. */
export interface AcImpedanceRow {
  readonly size: string;
  readonly xOhmPerKft: { readonly nonmagnetic: number; readonly steel: number };
  readonly rOhmPerKft: ByMetal;
  /** R cos φ + X sin φ at 0.85 power factor. */
  readonly zOhmPerKft: ByMetal;
  readonly xOhmPerKm: { readonly nonmagnetic: number; readonly steel: number };
  readonly rOhmPerKm: ByMetal;
  readonly zOhmPerKm: ByMetal;
}

const metals: readonly Material[] = ['Cu', 'Al'];
const pairs = metals.flatMap((metal) => conduits.map((conduit) => ({ metal, conduit })));

function columnsIn(unit: string, suffix: 'OhmPerKft' | 'OhmPerKm'): [string, Column][] {
  const number = { type: 'number', atLeast: 0.001, atMost: 50 } as const;
  const of = (letter: 'r' | 'z', words: string): [string, Column][] =>
    pairs.map(({ metal, conduit }) => [
      `${letter}${suffix}.${metal}.${conduit}`,
      { ...number, label: `${words}, ${unit}, ${metal} in ${conduit}`, blank: true },
    ]);
  return [
    [`x${suffix}.nonmagnetic`, { ...number, label: `X, ${unit}, in PVC or aluminum` }],
    [`x${suffix}.steel`, { ...number, label: `X, ${unit}, in steel` }],
    ...of('r', 'AC resistance'),
    ...of('z', 'Z at 0.85 PF'),
  ];
}

/** NEC Chapter 9 Table 9: AC resistance and reactance of three single conductors in a conduit. */
export const acImpedance: Subject<AcImpedanceRow> = {
  id: 'ac-impedance',
  needed: true,
  columns: {
    size: { label: 'size', type: 'size' },
    ...Object.fromEntries([...columnsIn('Ω/kft', 'OhmPerKft'), ...columnsIn('Ω/km', 'OhmPerKm')]),
  },
  key: ['size'],
  checks: [
    eachRow('steel conduit raises the reactance', 'xOhmPerKft.steel', ({ xOhmPerKft: x }) =>
      x.steel > x.nonmagnetic ? undefined : `${x.steel} against ${x.nonmagnetic}`,
    ),
    ...pairs.flatMap(({ metal, conduit }) => [
      falling<AcImpedanceRow>(`rOhmPerKft.${metal}.${conduit}`, (row) => row.rOhmPerKft[metal][conduit]),
      // Both sides are printed with two figures at the small end.
      near<AcImpedanceRow>(
        'Z is R × 0.85 + X × 0.527',
        `zOhmPerKft.${metal}.${conduit}`,
        (row) => row.zOhmPerKft[metal][conduit],
        (row) => {
          const r = row.rOhmPerKft[metal][conduit];
          const x = conduit === 'steel' ? row.xOhmPerKft.steel : row.xOhmPerKft.nonmagnetic;
          return r === null ? null : r * 0.85 + x * 0.5268;
        },
        0.055,
      ),
      near<AcImpedanceRow>(
        'Ω/km is Ω/kft',
        `rOhmPerKm.${metal}.${conduit}`,
        (row) => row.rOhmPerKm[metal][conduit],
        (row) => {
          const r = row.rOhmPerKft[metal][conduit];
          return r === null ? null : r / 0.3048;
        },
        0.05,
      ),
    ]),
  ],
  files: [nec2023 as TableFile],
};
