import { type Call, Failure } from '../../language';
import type { Material } from '../../tables';
import type { Conductor } from '../conductor';
import { groundingConductor } from '../rules/grounding-conductor';
import { tablesOf } from '../settings';

/** Area of a conductor as Table 8 prints it, in circular mils. */
const areaCmil = (call: Call, conductor: Conductor): number | undefined =>
  tablesOf(call).conductorProperties(conductor.size.text, 'stranded')?.row.areaCmil;

/**
 * The smallest equipment grounding conductor for the circuit's device, larger where the circuit conductors are larger
 * than `smallest`, the size that would do.
 */
export function circuitGroundingConductor(
  call: Call,
  question: { ocpd: number; material: Material; conductor: Conductor; smallest: Conductor | undefined },
): Conductor | undefined {
  const { ocpd, material, conductor, smallest } = question;
  const chosen = areaCmil(call, conductor);
  const needed = smallest && areaCmil(call, smallest);
  const areaRatio = chosen && needed ? Math.max(1, chosen / needed) : 1;
  const found = groundingConductor(call, { ocpd, material, areaRatio, circuit: conductor });
  return found instanceof Failure ? undefined : found;
}
