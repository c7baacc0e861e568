import type { AcImpedanceRow } from '../tables';

/** Conduit materials that the AC impedance table tells apart. */
type Conduit = keyof AcImpedanceRow['rOhmPerKft']['Cu'];

/** Raceway types as a sheet names them, with the material that counts for impedance. */
export const conduitOf = {
  PVC: 'PVC',
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
