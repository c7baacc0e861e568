import type { StatementResult, Step } from '../language';
import { citation } from './citation';
import { formulaBlocks, heading, type Place, type Side } from './formula';
import { symbolText } from './letter-symbol';
import { valueLatex } from './maths-latex';
import { folderPart, seenFrom } from './other-sheet';
import type { Block } from './output';
import { equationBlock, solutionBlock } from './solution';
import { showValue } from './value';
import { valueTable } from './value-table';
import { verdictBlocks } from './verdict';

/** Steps as blocks, in order; `statement` is the one that they are all of, absent inside a call. */
export function stepsBlocks(steps: readonly Step[], statement?: StatementResult): Block[] {
  const told = new Set(steps.flatMap((step) => (step.kind === 'call' ? [step.function] : [])));
  return steps.flatMap((step, i) =>
    stepBlocks(step, { told, ...(statement && i === steps.length - 1 && { statement }) }),
  );
}

function stepBlocks(step: Step, place: Place): Block[] {
  const { statement } = place;
  switch (step.kind) {
    case 'formula':
      return formulaBlocks(step, place);
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
      return verdictBlocks(step, statement);
    case 'row':
      return [{ kind: 'group', title: `Worked for ${step.row.replaceAll('`', '')}`, blocks: stepsBlocks(step.steps) }];
    case 'call':
      return [callBlock(step)];
    case 'taken':
      return takenBlocks(step, heading(step.symbol, statement));
    case 'equation':
      return [equationBlock(step)];
    case 'solution':
      return [solutionBlock(step, place)];
  }
}

/** A value of another sheet, then how it came about there, so that its tables and assumptions are on the page. */
function takenBlocks({ file, result, steps, behind }: Step & { kind: 'taken' }, equals: Side): Block[] {
  const from = { name: file, path: file };
  const remark = `from ${file}`;
  const table = valueTable(result);
  const value: Block = table
    ? { kind: 'group', title: `${equals.text.replace(/ = $/, '')}, ${remark}`, blocks: [table], from }
    : { kind: 'maths', text: equals.text + showValue(result), latex: equals.latex + valueLatex(result), remark, from };
  // What is named there is named from there.
  const there = (shown: readonly Step[]) => seenFrom(folderPart(file), stepsBlocks(shown));
  const blocks = steps.every(isSelfEvident) ? [] : there(steps);
  const rests: Block[] =
    behind.length === 0 ? [] : [{ kind: 'group', title: 'What goes into that', blocks: there(behind) }];
  return blocks.length + rests.length === 0
    ? [value]
    : [value, { kind: 'group', title: `How ${file} came to it`, blocks: [...blocks, ...rests], from }];
}

/** A value that stands there as it was written, so that its result alone says everything. */
const isSelfEvident = (step: Step): boolean =>
  (step.kind === 'formula' && !step.substituted) || (step.kind === 'call' && step.steps.length === 0);

/** What a function did: its call as it was made, what it took where nothing was written, and its steps. */
function callBlock(step: Step & { kind: 'call' }): Block {
  const given = step.arguments.filter((argument) => argument.given);
  const taken = step.arguments.filter((argument) => !argument.given && argument.value.kind !== 'absent');
  const list = given.map(({ name, value }) => `${name}: ${showValue(value)}`).join(', ');
  const result = valueTable(step.result) || step.result.kind === 'absent' ? '' : ` = ${showValue(step.result)}`;
  const defaults: Block[] =
    taken.length === 0
      ? []
      : [{ kind: 'assumption', text: taken.map(({ name, value }) => `${name} ${showValue(value)}`).join(', ') }];
  return {
    kind: 'group',
    title: `${step.function}(${list})${result}`,
    blocks: [...defaults, ...stepsBlocks(step.steps)],
  };
}
