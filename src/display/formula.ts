import type { LetterSymbol, Maths, StatementResult, Step, Value } from '../language';
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

/** What the result is called, with its equals sign. */
export function heading(symbol: LetterSymbol | undefined, statement: StatementResult | undefined): Side {
  if (symbol) {
    return { text: `${symbolText(symbol)} = `, latex: `${symbolLatex(symbol)} = ` };
  }
  const name = statement?.name;
  return name === undefined ? { text: '', latex: '' } : { text: `${name} = `, latex: `${nameLatex(name)} = ` };
}

/** `I = U / R = 207.6 V / 11.9 Ω = 17.45 A`; a side that says nothing new is left out. */
export function formulaBlocks(step: Step & { kind: 'formula' }, statement: StatementResult | undefined): Block[] {
  const start = heading(step.symbol, statement);
  const result: Side = { text: showValue(step.result), latex: valueLatex(step.result) };
  const formula = sideOf(step.formula);
  const sides = [formula];
  if (step.substituted) {
    sides.push(sideOf(step.substituted));
  }
  const table = valueTable(step.result);
  if (isWritten(step.formula) && !table) {
    // A given number stands as its author wrote it; with a meter's limits, as it is known.
    sides.splice(0, 1, isUncertain(step.result) ? result : formula);
  } else if (!table) {
    sides.push(result);
  }
  const told = sides.filter((side, i) => i === 0 || side.text !== sides[i - 1].text);
  const remark = step.remark ?? statement?.remark;
  const line: Block = {
    kind: 'maths',
    text: start.text + told.map((side) => side.text).join(' = '),
    latex: start.latex + told.map((side) => side.latex).join(' = '),
    ...(remark !== undefined && { remark }),
  };
  return table ? [line, table] : [line];
}

export const sideOf = (maths: Maths): Side => ({ text: mathsText(maths), latex: mathsLatex(maths) });

const isWritten = (maths: Maths): boolean => maths.kind === 'literal' || maths.kind === 'plus-minus';

const isUncertain = (value: Value): boolean => value.kind === 'quantity' && value.uncertainty !== undefined;
