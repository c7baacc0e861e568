import { type Call, Failure } from '../../language';
import { type Conductor, conductorText } from '../conductor';
import { tablesOf } from '../settings';
import { cellsOf } from './shown-cells';

/** Outside measures of a conductor, insulation included. */
export interface ConductorOutline {
  readonly areaIn2: number;
  readonly diameterIn: number;
}

/**
 * What a conductor takes of a raceway, by the table of insulated conductors, or by the conductor table where it is bare
 * (NEC Chapter 9 Tables 5 and 8). `symbol` heads the step that shows it.
 */
export function conductorOutline(call: Call, conductor: Conductor, symbol: string): ConductorOutline | Failure {
  const tables = tablesOf(call);
  const { size, insulation } = conductor;
  const named = conductorText(conductor);
  if (conductor.bare) {
    const found = tables.conductorProperties(size.text, conductor.stranding);
    if (!found) {
      return missing(`The conductor table of ${tables.edition} has no bare ${named}`);
    }
    const { overallAreaIn2: areaIn2, overallDiameterIn: diameterIn } = found.row;
    const row = cellsOf(found, 'size', 'stranding', 'overall area, in²');
    call.table({ symbol, value: areaIn2, unit: 'in²', source: found.source, row, remark: named });
    return { areaIn2, diameterIn };
  }
  if (!insulation) {
    return new Failure(
      `${named} does not say its insulation, and its outside size hangs on that. Add it, such as ${conductorText({ ...conductor, insulation: 'THHN' })}, or bare.`,
      'conductors',
      'insulation-missing',
    );
  }
  const found = tables.insulatedArea(insulation, size.text);
  if (!found) {
    return missing(`The table of insulated conductors of ${tables.edition} has no ${size.text} ${insulation}`);
  }
  const { areaIn2, diameterIn } = found.row;
  call.table({ symbol, value: areaIn2, unit: 'in²', source: found.source, row: found.shown, remark: named });
  return { areaIn2, diameterIn };
}

const missing = (what: string): Failure =>
  new Failure(
    `${what}: take the outside diameter from its maker, or choose a listed size and type.`,
    'conductors',
    'not-in-table',
  );
