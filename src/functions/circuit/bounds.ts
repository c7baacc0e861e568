import { type Call, Failure } from '../../language';
import type { Material } from '../../tables';
import type { Conductor } from '../conductor';
import type { AmpacityFact, CircuitFact } from '../facts';
import { groundingConductor } from '../rules/grounding-conductor';
import { largestDeviceOn, smallestDeviceFor } from '../rules/next-standard-size';
import { tablesOf } from '../settings';
import type { CircuitLoad } from './kinds/kind';
import { largestFirstChoice } from './kinds/motor';

/** Largest device over the current of one appliance that is not marked with another (NEC 422.11(E)). */
const appliancePercent = 150;

/** What other rules would allow or ask of a circuit, for lints to compare with; amperes. */
export function circuitBounds(
  call: Call,
  circuit: {
    conductor: Conductor;
    /** Metal of the grounding conductor. */
    material: Material;
    ampacity: AmpacityFact;
    sets: number;
    ocpd: number;
    load: CircuitLoad;
    loadCurrent: number;
  },
): Pick<CircuitFact, 'tableEgc' | 'at75' | 'largestApplianceOcpd' | 'largestMotorOcpd'> {
  const tables = tablesOf(call);
  const { conductor, material, ampacity, sets, ocpd, load, loadCurrent } = circuit;
  const tableEgc = groundingConductor(call, { ocpd, material, areaRatio: 1, circuit: conductor });
  const total = ampacity.ampacityAt75 === undefined ? undefined : ampacity.ampacityAt75 * sets;
  const forAppliance = (loadCurrent * appliancePercent) / 100;
  return {
    tableEgc: tableEgc instanceof Failure ? undefined : tableEgc,
    at75:
      total === undefined
        ? undefined
        : { totalAmpacity: total, largestOcpd: largestDeviceOn(tables, total)?.row.rating ?? 0 },
    largestMotorOcpd: largestFirstChoice(call, load),
    largestApplianceOcpd: smallestDeviceFor(tables, forAppliance)?.row.rating ?? forAppliance,
  };
}
