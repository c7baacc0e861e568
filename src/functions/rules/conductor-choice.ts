import { type Call, Failure } from '../../language';
import type { Material, Size } from '../../tables';
import type { Conductor } from '../conductor';
import type { AmpacityFact } from '../facts';
import { tablesOf } from '../settings';
import { type AmpacityQuestion, ampacityChain } from './ampacity-chain';
import { conductorCarries, type Demand } from './required-current';
import { unwatched } from './unwatched';

export interface ConductorQuestion extends Omit<AmpacityQuestion, 'conductor' | 'insulation'> {
  readonly material: Material;
  readonly insulation: string | undefined;
  readonly sets: number;
  readonly demand: Demand;
  /** What else a size must satisfy: the device on it, the voltage drop. */
  readonly also: (ampacity: AmpacityFact) => boolean;
  /** Ampacity of building wire where it is not said. */
  readonly ampacityOf?: (call: Call, question: AmpacityQuestion) => AmpacityFact | Failure;
}

/** The smallest size for conductors in parallel is 1/0 AWG (NEC 310.10(G)). */
const smallestParallelMm2 = 53;

/** A conductor as a choice: of the size and metal asked for, everything else as usual. */
export const plainConductor = (size: Size, material: Material, insulation?: string): Conductor => ({
  size,
  material,
  stranding: 'stranded',
  strandingGiven: false,
  coated: false,
  bare: false,
  ...(insulation ? { insulation } : {}),
});

/** The smallest sizes that carry the demand and satisfy the rest, at most `count`, smallest first; nothing is shown. */
export function sufficientConductors(call: Call, question: ConductorQuestion, count: number): AmpacityFact[] {
  const silent = unwatched(call);
  const sufficient: AmpacityFact[] = [];
  for (const size of tablesOf(call).sizes) {
    if (question.sets > 1 && size.mm2 < smallestParallelMm2) {
      continue;
    }
    const conductor = plainConductor(size, question.material, question.insulation);
    const ampacity = (question.ampacityOf ?? ampacityChain)(silent, { ...question, conductor });
    if (
      !(ampacity instanceof Failure) &&
      conductorCarries(ampacity, question.sets, question.demand) &&
      question.also(ampacity)
    ) {
      sufficient.push(ampacity);
      if (sufficient.length === count) {
        break;
      }
    }
  }
  return sufficient;
}
