import { type Call, defineFormula } from '../../language';
import type { AmpacityFact } from '../facts';
import { figure } from '../number-text';
import { reaches } from './last-bits';

/** What a load asks of its conductor and device, in amperes, all sets together. */
export interface Demand {
  /** The load's own current. */
  readonly load: number;
  /** With the factor that its rule adds. */
  readonly required: number;
  /** `17.4 A × 125 % = 21.8 A` */
  readonly because: string;
}

const requiredForContinuous = defineFormula({
  symbol: 'I_required',
  text: '1.25 * I',
  units: { I: 'A' },
  result: 'A',
});

/** 125 % of a continuous load, the load itself otherwise (NEC 210.19, 210.20, 215.2, 215.3). */
export function demandOf(call: Call, load: number, continuous: boolean): Demand {
  if (!continuous) {
    return { load, required: load, because: `${figure(load)} A` };
  }
  const required = requiredForContinuous(call, { I: load });
  return { load, required, because: `${figure(load)} A × 125 % = ${figure(required)} A` };
}

/** A nameplate's minimum circuit ampacity: it holds whatever factor applies; amperes. */
export const nameplateDemand = (mca: number, load: number): Demand => ({
  load,
  required: mca,
  because: `the nameplate’s minimum circuit ampacity of ${figure(mca)} A`,
});

/**
 * What a conductor's final ampacity has to reach. The code compares twice: with the added 25 % at the terminals and
 * before derating, and without it after derating. Where the first comparison passes on a derated conductor, the second
 * is the one that decides.
 */
export function governingRequirement(
  ampacity: AmpacityFact,
  sets: number,
  demand: Demand,
): { readonly required: number; readonly because: string } {
  const derating = ampacity.ambientFactor * ampacity.bundlingFactor;
  const beforeDerating = Math.min(ampacity.base, ampacity.terminalBase) * sets;
  if (derating < 1 && demand.required > demand.load && reaches(beforeDerating, demand.required)) {
    return {
      required: demand.load,
      because: `${demand.because} before derating, ${figure(demand.load)} A after it`,
    };
  }
  return demand;
}

export const conductorCarries = (ampacity: AmpacityFact, sets: number, demand: Demand): boolean =>
  reaches(ampacity.ampacity * sets, governingRequirement(ampacity, sets, demand).required);
