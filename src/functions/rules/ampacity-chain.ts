import { type Call, defineFormula, Failure } from '../../language';
import type { TemperatureColumn } from '../../tables';
import { type Conductor, conductorText } from '../conductor';
import type { AmpacityFact } from '../facts';
import { leaveFact } from '../leave-fact';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { quantityValue } from '../step-values';
import { insulationType } from './insulation-type';
import { cellsOf } from './shown-cells';
import { cablesHeldTo60, terminalColumn } from './terminal-temperature';
import { notWhole } from './whole-number';

export interface AmpacityQuestion {
  readonly conductor: Conductor;
  readonly insulation: string | undefined;
  /** Marked rating of the terminals in °C; by rule when absent. */
  readonly terminals: number | undefined;
  readonly ambient: number;
  readonly bundled: number;
  /** Rating of the circuit in where it is known: it decides what unmarked terminals allow. */
  readonly rating?: number;
}

const deratedAmpacity = defineFormula({
  symbol: 'I_derated',
  text: 'I_table * k_ambient * k_bundled',
  units: { I_table: 'A', k_ambient: '', k_bundled: '' },
  result: 'A',
});

const lesserAmpacity = defineFormula({
  symbol: 'I_z',
  text: 'min(I_derated, I_terminals)',
  units: { I_derated: 'A', I_terminals: 'A' },
  result: 'A',
});

/**
 * One conductor's ampacity in amperes: the insulation's column of the ampacity table, corrected for ambient temperature
 * and adjusted for bundling, and never above the terminals' column (NEC 310.15, 110.14(C)). Leaves an ampacity fact.
 */
export function ampacityChain(call: Call, question: AmpacityQuestion): AmpacityFact | Failure {
  const { conductor, ambient, bundled } = question;
  const tables = tablesOf(call);
  const named = conductorText(conductor);

  const insulation = insulationType(conductor, question.insulation);
  if (insulation instanceof Failure) {
    return insulation;
  }
  const type = tables.insulation(insulation);
  const ampacities = tables.ampacity(conductor.size.text);
  if (!type || !ampacities) {
    return new Failure(
      type
        ? `${conductor.size.text} is not in the ampacity table of ${tables.edition}.${conductor.size.unit === 'mm²' ? ' It has AWG and kcmil sizes: bring your standard’s ampacities as a table file, or ask for voltage drop and resistance alone.' : ''}`
        : `${insulation} is not in the insulation table of ${tables.edition}.`,
      'conductor',
      'not-in-table',
    );
  }
  const terminals = terminalColumn(conductor.size, insulation, question.terminals, question.rating);
  if (terminals instanceof Failure) {
    return terminals;
  }
  const uncounted = notWhole(bundled, 'bundled', 'conductors');
  if (uncounted) {
    return uncounted;
  }

  const column = cablesHeldTo60[insulation]?.deratedFrom ?? type.row.columnDryC;
  const amperesIn = (wanted: TemperatureColumn) => ampacities.row.amperes[conductor.material][wanted];
  const base = amperesIn(column);
  const terminalBase = amperesIn(terminals.column);
  if (base === null || terminalBase === null) {
    return new Failure(
      `${ampacities.source.table} has no ${base === null ? column : terminals.column} °C value for ${conductor.size.text} ${conductor.material}: choose a larger size.`,
      'conductor',
      'not-in-table',
    );
  }
  const correction = tables.ambientCorrection(ambient);
  const ambientFactor = correction?.row.factor[column];
  if (!correction || ambientFactor === undefined || ambientFactor === null) {
    return new Failure(
      `At an ambient of ${figure(ambient)} °C a ${column} °C conductor has no ampacity left: use a higher-rated insulation or a cooler place.`,
      'ambient',
      'ambient-too-hot',
    );
  }
  const adjustment = tables.bundling(bundled);
  if (!adjustment) {
    return new Failure(`${bundled} conductors are not in the adjustment table.`, 'bundled', 'not-in-table');
  }
  const bundlingFactor = adjustment.row.percent / 100;

  const cellsIn = (wanted: TemperatureColumn) => cellsOf(ampacities, 'size', `A, ${conductor.material}, ${wanted} °C`);
  if (call.shown) {
    call.table({
      symbol: 'I_table',
      value: base,
      unit: 'A',
      source: ampacities.source,
      row: cellsIn(column),
      remark: `${insulation}: ${column} °C column`,
    });
    call.table({
      symbol: 'k_ambient',
      value: ambientFactor,
      unit: '',
      source: correction.source,
      row: cellsOf(correction, 'ambient from, °C', 'ambient to, °C', `factor, ${column} °C conductor`),
    });
    call.table({
      symbol: 'k_bundled',
      value: bundlingFactor,
      unit: '',
      source: adjustment.source,
      row: cellsOf(adjustment, 'conductors from', 'conductors to', '% of ampacity'),
    });
  }
  const derated = deratedAmpacity(call, { I_table: base, k_ambient: ambientFactor, k_bundled: bundlingFactor });
  if (terminals.from === 'rule') {
    call.assume(terminals.because);
  }
  if (call.shown) {
    if (terminals.from === 'cable') {
      call.choose({
        symbol: { base: 'T', subscript: 'terminals' },
        result: quantityValue(terminals.column, '°C'),
        because: terminals.because,
      });
    }
    call.table({
      symbol: 'I_terminals',
      value: terminalBase,
      unit: 'A',
      source: ampacities.source,
      row: cellsIn(terminals.column),
      remark: `${terminals.column} °C column`,
    });
  }
  const ampacity = lesserAmpacity(call, { I_derated: derated, I_terminals: terminalBase });
  const unmarkedAt75 = () => {
    const marked = terminals.from === 'rule' && terminals.column === 60 ? amperesIn(75) : null;
    return marked === null ? undefined : Math.min(derated, marked);
  };
  const fact: AmpacityFact = {
    about: 'ampacity',
    conductor: conductor.insulation ? conductor : { ...conductor, insulation },
    insulationColumn: column,
    base,
    ambientC: ambient,
    ambientFactor,
    bundled,
    bundlingFactor,
    derated,
    terminalColumn: terminals.column,
    terminalBase,
    terminalsFrom: terminals.from,
    ampacity,
    ampacityAt75: unmarkedAt75(),
    limitedBy: derated <= terminalBase ? 'derating' : 'terminals',
    chain: `${named}: ${base} A (${column} °C column) × ${ambientFactor} × ${bundlingFactor} = ${figure(derated)} A; terminals ${terminals.column} °C allow ${terminalBase} A`,
  };
  leaveFact(call, fact);
  return fact;
}
