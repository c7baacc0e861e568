import type { Diagnostic } from '../../text';
import type { Statement } from '../checking/binding';
import { Node, spanOf, textOf } from '../syntax/tree';
import { Compiler } from './compiler';
import { nearness } from './operations';
import type { Runner } from './runner';

/** The bounds of an input: as written, and in the coherent SI unit. */
export interface InputBounds {
  readonly low: string;
  readonly high: string;
  readonly least: number;
  readonly most: number;
}

/** The bounds written beside an input's value; undefined where there are none. */
export function inputBounds(runner: Runner, statement: Statement): InputBounds | undefined {
  const { tree, meaning } = statement.cell;
  const range = tree.kinds[statement.node] === Node.Input ? tree.nextSiblings[statement.expression] : -1;
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
  const [least, most] = slots.map((slot) => machine.numbers[slot]);
  machine.forget(mark);
  return { low: textOf(tree, low), high: textOf(tree, high), least, most };
}

/** True when a number lies outside the bounds by more than rounding. */
export function isOutside(number: number, { least, most }: InputBounds): boolean {
  const margin = nearness * Math.abs(number);
  return !(number >= least - margin && number <= most + margin);
}

/** What is wrong with an input's value: it lies outside the bounds written beside it. */
export function inputProblem(runner: Runner, statement: Statement): Diagnostic | undefined {
  const bounds = inputBounds(runner, statement);
  if (!bounds || !isOutside(runner.machine.numbers[statement.slot], bounds)) {
    return undefined;
  }
  const { tree } = statement.cell;
  const value = statement.expression;
  return {
    code: 'input-out-of-range',
    severity: 'error',
    span: spanOf(tree, value),
    message: `\`${textOf(tree, value)}\` is outside \`${bounds.low}\` to \`${bounds.high}\`, the bounds of this input. Change the value or the bounds.`,
  };
}
