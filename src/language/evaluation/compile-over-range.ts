import { type Operator, textOf } from '../syntax/tree';
import { BoundSite } from './bound-site';
import type { Compiler } from './compiler';
import { type Frame, typeIn } from './frame';
import { Operation, operationOf } from './operations';

/** A comparison of which one side or both, compiled already, are readings over range. */
export function compileOverRange(
  compiler: Compiler,
  frame: Frame,
  node: number,
  { left, right, target }: { readonly left: number; readonly right: number; readonly target: number },
): number {
  const { tree } = frame.meaning;
  const leftNode = tree.firstChildren[node];
  const rightNode = tree.nextSiblings[leftNode];
  const isLeft = typeIn(frame, leftNode).kind === 'bound';
  const isBoth = isLeft && typeIn(frame, rightNode).kind === 'bound';
  const slot = compiler.slotFor(1, target);
  const operation = operationOf[tree.operators[node] as Operator] ?? Operation.NoValue;
  const [end, other] = isLeft ? [left, right] : [right, left];
  const written = textOf(tree, isLeft ? leftNode : rightNode);
  compiler.site(new BoundSite(operation, end, isBoth ? undefined : other, isLeft, slot, written));
  return slot;
}
