import type { CircuitFact, Conductor } from '../functions';

/** True when the circuit's grounding conductor is smaller than `wanted`, and smaller than the circuit conductors. */
export function isShortOf({ egc, conductor }: CircuitFact, wanted: Conductor): boolean {
  if (!egc || egc.material !== wanted.material || egc.size.mm2 >= wanted.size.mm2) {
    return false;
  }
  // Never asked to be larger than the circuit conductors (NEC 250.122(A)).
  return egc.material !== conductor.material || egc.size.mm2 < conductor.size.mm2;
}

/** True when the circuit conductors are larger than they need be, so that more is asked than for the device alone. */
export const isUpsized = ({ smallestEgc, tableEgc }: CircuitFact): boolean =>
  smallestEgc !== undefined && tableEgc !== undefined && smallestEgc.size.mm2 > tableEgc.size.mm2;
