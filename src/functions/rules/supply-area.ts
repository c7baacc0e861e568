import { type Call, defineFormula, Failure } from '../../language';
import { type Conductor, conductorText } from '../conductor';
import { tablesOf } from '../settings';

const totalArea = defineFormula({ symbol: 'A', text: 'n * A_1', units: { n: '', A_1: 'cmil' }, result: 'cmil' });

/** Area of a supply conductor as Table 8 prints it, in circular mils; a parallel set counts together. */
export function supplyArea(call: Call, conductor: Conductor, sets: number): number | Failure {
  const found = tablesOf(call).conductorProperties(conductor.size.text, 'stranded');
  return found
    ? totalArea(call, { n: sets, A_1: found.row.areaCmil })
    : new Failure(
        `The conductor table has no ${conductorText(conductor)}: choose a listed size.`,
        'conductor',
        'not-in-table',
      );
}
