import type { StatementResult, Step, Value, Verdict } from '../language';
import { roundForCheck } from './comparison';
import { sideOf } from './formula';
import { intervalBlock } from './interval';
import type { Block } from './output';
import { showValue } from './value';

/** A check with both sides, its verdict and what it has to spare; then a picture where doubt decides. */
export function verdictBlocks(step: Step & { kind: 'comparison' }, statement: StatementResult | undefined): Block[] {
  const block = verdictBlock(step, statement);
  const picture = step.doubtful && intervalBlock(step.doubtful, block);
  return picture ? [block, picture] : [block];
}

function verdictBlock(
  step: Step & { kind: 'comparison' },
  statement: StatementResult | undefined,
): Block & { kind: 'verdict' } {
  const outcome = step.result.kind === 'boolean' ? step.result : undefined;
  const verdict = outcome?.value === true ? 'yes' : outcome?.value === 'cannot tell' ? 'cannot tell' : 'no';
  const shown = sideOf(roundForCheck(step.substituted ?? step.formula, verdict));
  const formula = sideOf(step.formula);
  const margin = marginText(step.margin, verdict);
  return {
    kind: 'verdict',
    verdict,
    label: labelOf(statement?.label, formula.text),
    text: shown.text,
    latex: shown.latex,
    ...(margin !== undefined && { margin }),
    ...(outcome?.doubt && {
      advice: `most of the doubt comes from ${outcome.doubt.dominant}; ${outcome.doubt.advice}`,
    }),
  };
}

/** The label, or the formula where the check has no text of its own and is told by its source. */
const labelOf = (label: string | undefined, formula: string): string =>
  label === undefined || bare(label) === bare(formula) ? formula : label;

const signs: Readonly<Record<string, string>> = { '≤': '<=', '≥': '>=', '×': '*', '=': '==', '≠': '!=' };

const bare = (text: string): string =>
  text.replace(/\s|[()]/g, '').replace(/[≤≥×≠]|(?<![<>=!])=(?!=)/g, (c) => signs[c]);

function marginText(margin: Value | undefined, verdict: Verdict): string | undefined {
  if (margin?.kind !== 'quantity') {
    return undefined;
  }
  if (verdict === 'cannot tell') {
    return `margin ${showValue(margin)}`;
  }
  const { uncertainty: _, ...certain } = margin;
  const size = showValue({ ...certain, base: Math.abs(certain.base) });
  return margin.base === 0 ? 'nothing to spare' : margin.base > 0 ? `${size} to spare` : `missed by ${size}`;
}
