import { type Call, defineFormula, Failure } from '../../language';
import { conductorText } from '../conductor';
import type { AmpacityFact } from '../facts';
import { leaveFact } from '../leave-fact';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import type { AmpacityQuestion } from './ampacity-chain';
import { cellsOf } from './shown-cells';

/** Column whose ambient factors hold for cords, in °C. */
const column = 60;

const corrected = defineFormula({
  symbol: 'I_z',
  text: 'I_table * k_ambient',
  units: { I_table: 'A', k_ambient: '' },
  result: 'A',
});

/**
 * Ampacity of a flexible cord in amperes: by its own table, for two or three current-carrying conductors, corrected for
 * ambient temperature (NEC 400.5). Leaves an ampacity fact.
 */
export function cordAmpacity(call: Call, question: AmpacityQuestion, phases: number): AmpacityFact | Failure {
  const { conductor, ambient } = question;
  const tables = tablesOf(call);
  const found = conductor.material === 'Cu' ? tables.cordAmpacity(conductor.size.text) : undefined;
  if (!found) {
    return new Failure(
      `The cord table of ${tables.edition} has no ${conductorText(conductor)}: cords are of copper, 18 to 2 AWG.`,
      'conductor',
      'not-in-table',
    );
  }
  const correction = tables.ambientCorrection(ambient);
  const ambientFactor = correction?.row.factor[column];
  if (!correction || ambientFactor === undefined || ambientFactor === null) {
    return new Failure(`At ${figure(ambient)} °C a cord has no ampacity left.`, 'ambient', 'ambient-too-hot');
  }
  const three = phases === 3;
  const base = three ? found.row.threeA : found.row.twoA;
  call.assume(
    `${three ? 'three' : 'two'} current-carrying conductors in a hard-service cord; a neutral that carries load counts too`,
  );
  call.table({
    symbol: 'I_table',
    value: base,
    unit: 'A',
    source: found.source,
    row: cellsOf(found, 'size', `A, ${three ? 'three' : 'two'} current-carrying conductors`),
  });
  if (ambientFactor !== 1) {
    call.table({
      symbol: 'k_ambient',
      value: ambientFactor,
      unit: '',
      source: correction.source,
      row: cellsOf(correction, 'ambient from, °C', 'ambient to, °C', `factor, ${column} °C conductor`),
    });
  }
  const ampacity = ambientFactor === 1 ? base : corrected(call, { I_table: base, k_ambient: ambientFactor });
  const fact: AmpacityFact = {
    about: 'ampacity',
    conductor,
    insulationColumn: column,
    base,
    ambientC: ambient,
    ambientFactor,
    bundled: three ? 3 : 2,
    bundlingFactor: 1,
    derated: ampacity,
    terminalColumn: column,
    terminalBase: base,
    terminalsFrom: 'cable',
    ampacityAt75: undefined,
    ampacity,
    limitedBy: 'derating',
    chain: `${conductorText(conductor)} in a cord: ${base} A × ${ambientFactor} = ${figure(ampacity)} A`,
  };
  leaveFact(call, fact);
  return fact;
}
