import type { StatementResult, Step, Value } from '../language';
import { nameLatex, valueLatex } from './maths-latex';
import type { Block } from './output';
import { stepsBlocks } from './step';
import { showValue } from './value';
import { valueTable } from './value-table';

/** What a statement shows: how its result came about, then the result. `rows` is how many of a schedule's are shown. */
export function blocksOf(result: StatementResult, { rows }: { readonly rows?: number } = {}): Block[] {
  if (result.missing?.length) {
    const names = result.missing.join(' and ');
    const have = result.missing.length > 1 ? 'have' : 'has';
    return [{ kind: 'missing', ...named(result), text: `needs ${names}, which ${have} no value because of an error` }];
  }
  if (result.value === undefined && result.verdict === undefined) {
    return result.kind === 'other'
      ? []
      : [{ kind: 'missing', ...named(result), text: 'has no value; the problem is reported at its line' }];
  }
  const { steps } = result.trace();
  const blocks = stepsBlocks(steps, result).filter((block) => !isBareCall(block));
  const last = steps.at(-1);
  if (result.value?.kind === 'list' && result.value.schedule && last?.kind !== 'taken') {
    return [resultBlock(result, result.value, rows), ...blocks]; // The table first: the row worked out is an example of it.
  }
  if (result.value && (result.kind === 'definition' || result.kind === 'show') && !endsInResult(last)) {
    blocks.push(resultBlock(result, result.value));
  }
  return blocks;
}

const named = ({ name }: StatementResult) => (name === undefined ? {} : { name });

const endsInResult = (last: Step | undefined): boolean =>
  last !== undefined &&
  (last.kind === 'taken' ||
    ((last.kind === 'formula' || last.kind === 'table' || last.kind === 'solution') && !isComposite(last.result)));

/** A call that shows no step and takes nothing unsaid, as `meter` does: its result alone says it all. */
const isBareCall = (block: Block): boolean => block.kind === 'group' && block.blocks.length === 0;

const isComposite = (value: Value): boolean => valueTable(value) !== undefined;

function resultBlock({ name, remark }: StatementResult, value: Value, rows?: number): Block {
  const table = valueTable(value, rows);
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
