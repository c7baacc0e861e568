import type { AcImpedanceRow } from '../tables';

/** Conduit materials that the AC impedance table tells apart. */
type Conduit = keyof AcImpedanceRow['rOhmPerKft']['Cu'];

/** Raceway types as a sheet names them, with the material that counts for impedance. */
export const conduitOf = {
  PVC: 'PVC',
  PVC_80: 'PVC',
  ENT: 'PVC',
  EMT: 'steel',
  IMC: 'steel',
  RMC: 'steel',
  FMC: 'steel',
  LFMC: 'steel',
  steel: 'steel',
  aluminum: 'aluminum',
} as const satisfies Readonly<Record<string, Conduit>>;
export type RacewayWord = keyof typeof conduitOf;

export const racewayWords = Object.keys(conduitOf) as RacewayWord[];

/** Raceways that come in trade sizes, with the name that the table of raceway areas has for each. */
export const sizedRaceways = {
  EMT: 'EMT',
  IMC: 'IMC',
  RMC: 'RMC',
  FMC: 'FMC',
  LFMC: 'LFMC',
  PVC: 'PVC Sch 40',
  PVC_80: 'PVC Sch 80',
  ENT: 'ENT',
} as const satisfies Readonly<Partial<Record<RacewayWord, string>>>;
export type SizedRaceway = keyof typeof sizedRaceways;

export const sizedRacewayWords = Object.keys(sizedRaceways) as SizedRaceway[];

export const isSized = (word: RacewayWord): word is SizedRaceway => Object.hasOwn(sizedRaceways, word);
