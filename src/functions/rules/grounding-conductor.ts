import { type Call, defineFormula, Failure } from '../../language';
import { type Material, parseSize } from '../../tables';
import { type Conductor, conductorText } from '../conductor';
import { tablesOf } from '../settings';
import { conductorValue } from '../step-values';
import { reaches } from './last-bits';
import { plainConductor } from './plain-conductor';
import { cellsOf } from './shown-cells';

/** How the table heads its column for a metal. */
const headings = { Cu: 'copper', Al: 'aluminum or copper-clad aluminum' } as const;

const upsizedArea = defineFormula({
  symbol: 'A_egc',
  text: 'A_table * k_area',
  units: { A_table: 'cmil', k_area: '' },
  result: 'cmil',
});

/**
 * The equipment grounding conductor for a device's rating in amperes, its area raised in step with circuit conductors
 * that are larger than they need be (NEC Table 250.122, 250.122(B)). Never larger than `circuit`, where that is known.
 */
export function groundingConductor(
  call: Call,
  question: { ocpd: number; material: Material; areaRatio: number; circuit?: Conductor },
): Conductor | Failure {
  const tables = tablesOf(call);
  const { ocpd, material, areaRatio, circuit } = question;
  const found = tables.equipmentGrounding(ocpd);
  const size = found && parseSize(found.row[material]);
  if (!found || !size) {
    return new Failure(
      `${ocpd} A is above the equipment grounding table of ${tables.edition}.`,
      'ocpd',
      'not-in-table',
    );
  }
  if (call.shown) {
    call.table({
      symbol: 'EGC_table',
      value: size.text,
      source: found.source,
      row: cellsOf(found, 'overcurrent device not over, A', headings[material]),
    });
  }
  let chosen = plainConductor(size, material);
  if (!reaches(1, areaRatio)) {
    const area = tables.conductorProperties(size.text, 'stranded');
    const wanted = area && upsizedArea(call, { A_table: area.row.areaCmil, k_area: areaRatio });
    const larger = tables.sizes.find((other) =>
      reaches(tables.conductorProperties(other.text, 'stranded')?.row.areaCmil ?? 0, wanted ?? 0),
    );
    if (!wanted || !larger) {
      return new Failure('No size in the tables is large enough for that area ratio.', 'area_ratio', 'not-in-table');
    }
    chosen = plainConductor(larger, material);
    call.choose({
      result: conductorValue(chosen),
      because: 'raised in step with the circuit conductors',
      rule: '250.122(B)',
    });
  }
  if (circuit && chosen.material === circuit.material && chosen.size.mm2 > circuit.size.mm2) {
    chosen = plainConductor(circuit.size, material);
    call.choose({
      result: conductorValue(chosen),
      because: `never larger than the circuit conductors, ${conductorText(circuit)}`,
      rule: '250.122(A)',
    });
  }
  return chosen;
}
