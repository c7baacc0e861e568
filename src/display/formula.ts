import type { FormulaStep, LetterSymbol, Maths, StatementResult } from '../language';
import { symbolText } from './letter-symbol';
import { mathsLatex, nameLatex, symbolLatex, valueLatex } from './maths-latex';
import { mathsText } from './maths-text';
import type { Block } from './output';
import { showValue } from './value';
import { valueTable } from './value-table';

/** The same in both writings. */
export interface Side {
  readonly text: string;
  readonly latex: string;
}

/** Where a step stands. */
export interface Place {
  /** Given for a statement's last step, which bears its name and remark. */
  readonly statement?: StatementResult;
  /** Functions whose calls were shown before. */
  readonly told: ReadonlySet<string>;
}

/** What the result is called, with its equals sign. */
export function heading(symbol: LetterSymbol | undefined, statement: StatementResult | undefined): Side {
  if (symbol) {
    return { text: `${symbolText(symbol)} = `, latex: `${symbolLatex(symbol)} = ` };
  }
  const name = statement?.name;
  return name === undefined ? { text: '', latex: '' } : { text: `${name} = `, latex: `${nameLatex(name)} = ` };
}

/** `I = U / R = 207.6 V / 11.9 Ω = 17.45 A`; a side that says nothing new is left out. */
export function formulaBlocks(step: FormulaStep, { statement, told }: Place): Block[] {
  const start = heading(step.symbol, statement);
  const result: Side = { text: showValue(step.result), latex: valueLatex(step.result) };
  const formula = sideOf(step.formula);
  const table = valueTable(step.result);
  const sides: Side[] = [];
  if (!isToldBy(step.formula, told) && !isKnownBetter(step)) {
    sides.push(formula);
    if (step.substituted) {
      sides.push(sideOf(step.substituted));
    }
  }
  if (!table && !(isAsWritten(step) && sides.length > 0)) {
    sides.push(result);
  }
  const shown = sides.filter((side, i) => i === 0 || side.text !== sides[i - 1].text);
  const remark = step.remark ?? statement?.remark;
  const line: Block = {
    kind: 'maths',
    text: start.text + shown.map((side) => side.text).join(' = '),
    latex: start.latex + shown.map((side) => side.latex).join(' = '),
    ...(remark !== undefined && { remark }),
  };
  return table ? (shown.length > 0 ? [line, table] : [table]) : [line];
}

export const sideOf = (maths: Maths): Side => ({ text: mathsText(maths), latex: mathsLatex(maths) });

/** A call that stands alone was shown with its arguments and steps just before. */
const isToldBy = (formula: Maths, told: ReadonlySet<string>): boolean =>
  formula.kind === 'call' && told.has(formula.name);

/** A given number stands as its author wrote it, unless it was converted. */
const isAsWritten = ({ formula, result }: FormulaStep): boolean =>
  formula.kind === 'literal' && result.kind === 'quantity' && result.unit.symbol === (formula.unit ?? '');

/** A reading with limits says more than the bare number. */
const isKnownBetter = ({ formula, result }: FormulaStep): boolean =>
  (formula.kind === 'literal' || formula.kind === 'plus-minus') &&
  result.kind === 'quantity' &&
  result.uncertainty !== undefined;
