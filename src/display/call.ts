import type { Step } from '../language';
import type { Block } from './output';
import { stepBlocks } from './statement';
import { showValue } from './value';
import { valueTable } from './value-table';

/** What a function did: its call as it was made, what it took where nothing was written, and its steps. */
export function callBlock(step: Step & { kind: 'call' }): Block {
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
    blocks: [...defaults, ...step.steps.flatMap((inner) => stepBlocks(inner))],
  };
}
