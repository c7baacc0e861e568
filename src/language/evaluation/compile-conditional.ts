import type { Compiler } from './compiler';
import type { Frame } from './frame';
import { instructionLength, Operation } from './operations';

/** `if condition then a else b`, whose value takes `size` slots; neither branch runs where the condition is neither yes nor no. */
export function compileConditional(
  compiler: Compiler,
  frame: Frame,
  node: number,
  size: number,
  target: number,
): number {
  const { tree } = frame.meaning;
  const { machine } = compiler;
  const condition = tree.firstChildren[node];
  const thenNode = tree.nextSiblings[condition];
  const slot = compiler.slotFor(size, target);
  const answer = compiler.expression(frame, condition);
  const branch = machine.emit(Operation.Branch, answer);
  compiler.expression(frame, thenNode, slot);
  const overElse = machine.emit(Operation.Jump, 0);
  const elseStart = machine.codeLength;
  compiler.expression(frame, tree.nextSiblings[thenNode], slot);
  const overNoValue = machine.emit(Operation.Jump, 0, 1);
  const noValueStart = machine.codeLength;
  machine.emit(Operation.NoValue, slot, size);
  const distance = (from: number, to: number) => (to - from) / instructionLength - 1;
  machine.code[branch + 2] = distance(branch, elseStart);
  machine.code[branch + 3] = distance(branch, noValueStart);
  machine.code[overElse + 2] = distance(overElse, machine.codeLength);
  machine.code[overNoValue + 2] = distance(overNoValue, machine.codeLength);
  return slot;
}
