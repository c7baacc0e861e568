import { type Call, Failure } from '../../language';
import type { Material } from '../../tables';
import { type Conductor, conductorText } from '../conductor';
import type { AmpacityFact } from '../facts';
import { figure } from '../number-text';
import { type AmpacityQuestion, ampacityChain } from '../rules/ampacity-chain';
import { sufficientConductors } from '../rules/conductor-choice';
import type { Demand } from '../rules/required-current';
import { conductorValue } from '../step-values';

export interface CircuitConductorQuestion {
  readonly given: Conductor | undefined;
  readonly material: Material | undefined;
  readonly insulation: string | undefined;
  readonly terminals: number | undefined;
  readonly ambient: number;
  readonly bundled: number;
  readonly sets: number;
  readonly rating: number;
  /** What unmarked terminals go by, in amperes. */
  readonly terminalRating: number;
  readonly demand: Demand;
  /** Ampacity of conductors that are no building wire. */
  readonly ampacityOf: ((call: Call, question: AmpacityQuestion) => AmpacityFact | Failure) | undefined;
  /** The device's rule, and the drop limit where the sheet sets one. */
  readonly allowed: (ampacity: AmpacityFact) => boolean;
  readonly withinDrop: ((ampacity: AmpacityFact) => boolean) | undefined;
}

export interface CircuitConductor {
  readonly ampacity: AmpacityFact;
  /** Up to three sizes that satisfy everything; the smallest that would, drop aside. */
  readonly sufficient: readonly Conductor[];
  readonly smallestByAmpacity: Conductor | undefined;
}

/** Taken for a circuit whose conductor is left open. */
const usualInsulation = 'THHN';
const usualMaterial = 'Cu';

/** The circuit's conductor: the one given, or the smallest that satisfies every rule; with its ampacity worked out. */
export function circuitConductor(call: Call, question: CircuitConductorQuestion): CircuitConductor | Failure {
  const { given, demand, rating, ampacityOf } = question;
  const material = given?.material ?? question.material ?? usualMaterial;
  if (question.material && question.material !== material) {
    return new Failure(
      `The conductor says ${material}, the circuit says ${question.material}: keep one of them.`,
      'material',
      'contradictory-material',
    );
  }
  const insulation = given?.insulation ?? question.insulation ?? (ampacityOf ? undefined : usualInsulation);
  const { terminals, ambient, bundled, sets, allowed, withinDrop } = question;
  const conditions = { terminals, ambient, bundled, rating: question.terminalRating };
  const count = call.watched ? 3 : 1;
  const search = (also: (ampacity: AmpacityFact) => boolean) =>
    sufficientConductors(call, { ...conditions, material, insulation, sets, demand, ampacityOf, also }, count);
  const byAmpacity = search(allowed);
  const within = withinDrop ? search((ampacity) => allowed(ampacity) && withinDrop(ampacity)) : byAmpacity;
  const sufficient = within.map((ampacity) => ampacity.conductor);
  const conductor = given ?? sufficient[0];
  if (!conductor) {
    return new Failure(
      `No single ${[material, insulation].filter(Boolean).join(' ')} conductor does here for ${figure(demand.required)} A behind ${figure(rating)} A: use sets in parallel, cooler surroundings or a shorter run.`,
      undefined,
      'no-sufficient-size',
    );
  }
  if (!given && !question.material) {
    call.assume('copper taken: conductor and material not given');
  }
  if (!given && !question.insulation && !ampacityOf) {
    call.assume(`${usualInsulation} insulation taken: conductor and insulation not given`);
  }
  const asked = { ...conditions, conductor, insulation: question.insulation };
  const ampacity = (ampacityOf ?? ampacityChain)(call, asked);
  if (ampacity instanceof Failure) {
    return ampacity;
  }
  if (!given) {
    const byDrop = byAmpacity[0] && byAmpacity[0].conductor.size.text !== conductor.size.text;
    call.choose({
      result: conductorValue(conductor),
      because: byDrop
        ? `smallest size within the drop limit; ${conductorText(byAmpacity[0].conductor)} would carry ${demand.because}`
        : `smallest size that carries ${demand.because} behind a ${figure(rating)} A device`,
    });
  }
  return { ampacity, sufficient, smallestByAmpacity: byAmpacity[0]?.conductor };
}
