import type { EquationStep, SolutionStep } from '../language';
import { heading, type Place, sideOf } from './formula';
import { valueLatex } from './maths-latex';
import type { Block } from './output';
import { showValue } from './value';

/** The equation that the next line is turned round from: `U = I × R`. */
export function equationBlock({ left, right }: EquationStep): Block {
  return { kind: 'maths', ...sideOf({ kind: 'binary', operator: '==', left, right }) };
}

/** An unknown that no formula gives, and how it was found. */
export function solutionBlock({ symbol, by, result, remark }: SolutionStep, { statement }: Place): Block {
  const start = heading(symbol, statement);
  const own = remark ?? statement?.remark;
  const how =
    by.kind === 'search'
      ? `found by search from ${showValue(by.low)} to ${showValue(by.high)}`
      : `solved together with ${by.together.join(', ')}`;
  return {
    kind: 'maths',
    text: start.text + showValue(result),
    latex: start.latex + valueLatex(result),
    remark: own === undefined ? how : `${own}; ${how}`,
  };
}
