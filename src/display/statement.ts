import type { LetterSymbol, Maths, StatementResult, Step, Value } from '../language';
import { callBlock } from './call';
import { citation } from './citation';
import { roundForCheck } from './comparison';
import { symbolText } from './letter-symbol';
import { mathsLatex, nameLatex, symbolLatex, valueLatex } from './maths-latex';
import { mathsText } from './maths-text';
import type { Block } from './output';
import { showValue } from './value';
import { valueTable } from './value-table';

/** What a statement shows: how its result came about, then the result. */
export function blocksOf(result: StatementResult): Block[] {
  if (result.missing?.length) {
    const names = result.missing.join(' and ');
    return [{ kind: 'missing', ...named(result), text: `needs ${names}, which has no value because of an error` }];
  }
  if (result.value === undefined && result.verdict === undefined) {
    return result.kind === 'other'
      ? []
      : [{ kind: 'missing', ...named(result), text: 'has no value; the problem is reported at its line' }];
  }
  const { steps } = result.trace();
  const blocks = steps.flatMap((step, i) => stepBlocks(step, i === steps.length - 1 ? result : undefined));
  const last = steps.at(-1);
  if (result.value && (result.kind === 'definition' || result.kind === 'show') && !endsInResult(last)) {
    blocks.push(resultBlock(result, result.value));
  }
  return blocks;
}

const named = ({ name }: StatementResult) => (name === undefined ? {} : { name });

const endsInResult = (last: Step | undefined): boolean =>
  last !== undefined && (last.kind === 'formula' || last.kind === 'table') && !isComposite(last.result);

const isComposite = (value: Value): boolean => valueTable(value) !== undefined;

function resultBlock({ name, remark }: StatementResult, value: Value): Block {
  const table = valueTable(value);
  if (table) {
    return name === undefined ? table : { kind: 'group', title: name, blocks: [table] };
  }
  return {
    kind: 'maths',
    latex: (name === undefined ? '' : `${nameLatex(name)} = `) + valueLatex(value),
    text: (name === undefined ? '' : `${name} = `) + showValue(value),
    ...(remark !== undefined && { remark }),
  };
}

/** One step as blocks; `statement` is given for the last one, which bears the statement's name and remark. */
export function stepBlocks(step: Step, statement?: StatementResult): Block[] {
  switch (step.kind) {
    case 'formula':
      return formulaBlocks(step, statement);
    case 'table': {
      const equals = heading(step.symbol, statement);
      return [
        {
          kind: 'lookup',
          latex: equals.latex + valueLatex(step.result),
          text: equals.text + showValue(step.result),
          row: step.row,
          source: citation(step.source),
          fromMemory: step.source.basis === 'memory',
        },
      ];
    }
    case 'choice': {
      const rule = step.rule ? ` (${step.rule})` : '';
      const text = (step.symbol ? `${symbolText(step.symbol)} = ` : '') + showValue(step.result);
      return [{ kind: 'choice', text, because: step.because + rule }];
    }
    case 'assumption':
      return [{ kind: 'assumption', text: step.text }];
    case 'comparison':
      return [verdictBlock(step, statement)];
    case 'call':
      return [callBlock(step)];
  }
}

interface Side {
  readonly text: string;
  readonly latex: string;
}

function heading(symbol: LetterSymbol | undefined, statement: StatementResult | undefined): Side {
  if (symbol) {
    return { text: `${symbolText(symbol)} = `, latex: `${symbolLatex(symbol)} = ` };
  }
  const name = statement?.name;
  return name === undefined ? { text: '', latex: '' } : { text: `${name} = `, latex: `${nameLatex(name)} = ` };
}

/** `I = U / R = 207.6 V / 11.9 Ω = 17.45 A`; a side that says nothing new is left out. */
function formulaBlocks(step: Step & { kind: 'formula' }, statement: StatementResult | undefined): Block[] {
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

const sideOf = (maths: Maths): Side => ({ text: mathsText(maths), latex: mathsLatex(maths) });

const isWritten = (maths: Maths): boolean => maths.kind === 'literal' || maths.kind === 'plus-minus';

const isUncertain = (value: Value): boolean => value.kind === 'quantity' && value.uncertainty !== undefined;

function verdictBlock(step: Step & { kind: 'comparison' }, statement: StatementResult | undefined): Block {
  const outcome = step.result.kind === 'boolean' ? step.result : undefined;
  const verdict = outcome?.value === true ? 'yes' : outcome?.value === 'cannot tell' ? 'cannot tell' : 'no';
  const shown = sideOf(roundForCheck(step.substituted ?? step.formula, verdict));
  const formula = sideOf(step.formula);
  const margin = marginText(step.margin, verdict);
  return {
    kind: 'verdict',
    verdict,
    label: statement?.label ?? formula.text,
    text: shown.text,
    latex: shown.latex,
    ...(margin !== undefined && { margin }),
    ...(outcome?.doubt && {
      advice: `most of the doubt comes from ${outcome.doubt.dominant}; ${outcome.doubt.advice}`,
    }),
  };
}

function marginText(margin: Value | undefined, verdict: string): string | undefined {
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
