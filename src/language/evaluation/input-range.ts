import type { Diagnostic } from '../../text';
import type { Statement } from '../checking/binding';
import { Node, spanOf, textOf } from '../syntax/tree';
import { Compiler } from './compiler';
import { nearness } from './operations';
import type { Runner } from './runner';

/** What is wrong with an input's value: it lies outside the bounds written beside it. */
export function inputProblem(runner: Runner, statement: Statement): Diagnostic | undefined {
  const { tree, meaning } = statement.cell;
  const value = statement.expression;
  const range = tree.kinds[statement.node] === Node.Input ? tree.nextSiblings[value] : -1;
  if (range < 0 || tree.kinds[range] !== Node.Range || statement.type.kind !== 'quantity') {
    return undefined;
  }
  const { machine } = runner;
  const low = tree.firstChildren[range];
  const high = tree.nextSiblings[low];
  const mark = machine.mark();
  const compiler = new Compiler(machine, true);
  const slots = [machine.extend(1), machine.extend(1)];
  for (const [i, bound] of [low, high].entries()) {
    compiler.statement({ meaning, slots: new Map(), inner: new Map() }, bound, slots[i]);
  }
  machine.run(mark.codeLength, machine.codeLength);
  const number = machine.numbers[statement.compiled!.slot];
  const [least, most] = slots.map((slot) => machine.numbers[slot]);
  machine.forget(mark);
  const margin = nearness * Math.abs(number);
  if (number >= least - margin && number <= most + margin) {
    return undefined;
  }
  return {
    code: 'input-out-of-range',
    severity: 'error',
    span: spanOf(tree, value),
    message: `\`${textOf(tree, value)}\` is outside \`${textOf(tree, low)}\` to \`${textOf(tree, high)}\`, the bounds of this input. Change the value or the bounds.`,
  };
}
