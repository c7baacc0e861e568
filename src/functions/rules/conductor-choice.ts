import { type Call, Failure } from '../../language';
import type { Material } from '../../tables';
import type { AmpacityFact } from '../facts';
import { tablesOf } from '../settings';
import type { AmpacityQuestion } from './ampacity-chain';
import { ampacityLadder, type Rung } from './ampacity-ladder';
import { plainConductor } from './plain-conductor';
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

/** The smallest sizes that carry the demand and satisfy the rest, at most `count`, smallest first; nothing is shown. */
export function sufficientConductors(call: Call, question: ConductorQuestion, count: number): AmpacityFact[] {
  const { sets, demand, also } = question;
  const sufficient: AmpacityFact[] = [];
  for (const { size, ampacity } of rungsFor(call, question)) {
    if (sets > 1 && size.mm2 < smallestParallelMm2) {
      continue;
    }
    if (ampacity && conductorCarries(ampacity, sets, demand) && also(ampacity)) {
      sufficient.push(ampacity);
      if (sufficient.length === count) {
        break;
      }
    }
  }
  return sufficient;
}

/** By the tables of building wire; by a rule of the circuit's own where it has one, which may hang on its load. */
function* rungsFor(call: Call, question: ConductorQuestion): Generator<Rung> {
  const { ampacityOf, material, insulation } = question;
  if (!ampacityOf) {
    yield* ampacityLadder(call, question);
    return;
  }
  const silent = unwatched(call);
  for (const size of tablesOf(call).sizes) {
    const conductor = plainConductor(size, material, insulation);
    const ampacity = ampacityOf(silent, { ...question, conductor });
    yield { size, ampacity: ampacity instanceof Failure ? undefined : ampacity };
  }
}
