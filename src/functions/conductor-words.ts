import type { Material, Stranding } from '../tables';

/** The metals and every spelling that a sheet may use for them. */
export const materialWords: Readonly<Record<string, Material>> = {
  Cu: 'Cu',
  copper: 'Cu',
  Al: 'Al',
  aluminum: 'Al',
  aluminium: 'Al',
};

export const strandingWords: Readonly<Record<string, Stranding>> = { solid: 'solid', stranded: 'stranded' };

export const coatingWords: readonly string[] = ['coated', 'tinned'];

export const bareWord = 'bare';

/** Insulation and cable types, in the order of the insulation table; a test compares the two. */
export const insulationWords = [
  'TW',
  'UF',
  'UF-B',
  'NM-B',
  'THW',
  'THW-2',
  'THHW',
  'THHN',
  'THWN',
  'THWN-2',
  'XHH',
  'XHHW',
  'XHHW-2',
  'RHH',
  'RHW',
  'RHW-2',
  'USE',
  'USE-2',
  'ZW',
  'FEP',
  'SIS',
  'MTW',
  'SE',
  'SEU',
  'SER',
  'MC',
  'AC',
] as const;
export type InsulationWord = (typeof insulationWords)[number];

/** Every word that may follow a conductor's size. */
export const designationWords: readonly string[] = [
  ...Object.keys(materialWords),
  ...Object.keys(strandingWords),
  ...coatingWords,
  bareWord,
  ...insulationWords,
];

export const sizeUnits: readonly string[] = ['AWG', 'kcmil', 'MCM', 'mm²', 'mm2'];
export const alwaysSizeUnits: readonly string[] = ['AWG'];
