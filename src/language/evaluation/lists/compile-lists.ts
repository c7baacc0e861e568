import { itemOf } from '../../checking/lists';
import type { Meaning } from '../../checking/meaning';
import { Node, Operator, textOf } from '../../syntax/tree';
import type { Compiler } from '../compiler';
import { type Frame, typeIn } from '../frame';
import { instructionLength, Operation } from '../operations';
import { ListSite } from '../sites';
import { BundleSite, JoinSite } from './bundle-sites';
import { type ItemCode, type ItemInput, MapSite } from './map-site';
import { WhereSite } from './where-site';

/** True for an operator that is applied to each item of a list. */
export function isOverItems({ tree, types }: Meaning, node: number): boolean {
  const kind = tree.kinds[node] as Node;
  if (kind !== Node.Binary && kind !== Node.Unary) {
    return false;
  }
  const type = types[node];
  return type?.kind === 'list' && type.element.kind !== 'object';
}

/** Compiles operators over lists: all of them once, for one item. */
export function compileOverItems(compiler: Compiler, frame: Frame, node: number, target: number): number {
  const { meaning, locals } = frame;
  const { tree, types } = meaning;
  const before = compiler.inUse;
  const inputs: ItemInput[] = [];
  const items = new Map<number, number>();
  const gather = (part: number): void => {
    const kind = tree.kinds[part] as Node;
    const isList = types[part]?.kind === 'list';
    if (isOverItems(meaning, part) || (isList && (kind === Node.Group || kind === Node.Convert))) {
      for (let child = tree.firstChildren[part]; child >= 0; child = tree.nextSiblings[child]) {
        gather(child);
      }
      return;
    }
    const slot = compiler.expression(frame, part);
    if (isList) {
      inputs.push({ list: slot, item: compiler.own(1) });
    }
    items.set(part, isList ? inputs.at(-1)!.item : slot);
  };
  gather(node);
  const code = compileAside(compiler, { meaning, locals, items }, node);
  compiler.inUse = before;
  const slot = compiler.slotFor(1, target);
  const written = textOf(tree, node).replace(/\s+/g, ' ');
  compiler.site(
    new MapSite({
      inputs,
      code,
      element: itemOf(types[node]),
      target: slot,
      node,
      hole: (_, index) => ({ place: `item ${index + 1} of \`${written}\``, why: 'it has no finite result' }),
    }),
  );
  return slot;
}

/** Compiles an expression that does not run in its turn but whenever a site runs it. */
export function compileAside(compiler: Compiler, frame: Frame, node: number): ItemCode {
  const { machine } = compiler;
  const over = machine.emit(Operation.Jump, 0);
  const start = machine.codeLength;
  const result = compiler.own(1);
  compiler.expression(frame, node, result);
  const end = machine.codeLength;
  machine.code[over + 2] = (end - start) / instructionLength;
  return { start, end, result };
}

/** `list where answers` */
export function compileWhere(compiler: Compiler, frame: Frame, node: number, target: number): number {
  const { tree } = frame.meaning;
  const listNode = tree.firstChildren[node];
  const answersNode = tree.nextSiblings[listNode];
  const before = compiler.inUse;
  const list = compiler.expression(frame, listNode);
  const answers = compiler.expression(frame, answersNode);
  compiler.inUse = before;
  const slot = compiler.slotFor(1, target);
  const condition = textOf(tree, answersNode).replace(/\s+/g, ' ');
  compiler.site(new WhereSite(list, answers, slot, answersNode, condition));
  return slot;
}

/** `3 * object`, or two bundles in one. */
export function compileBundle(compiler: Compiler, frame: Frame, node: number, target: number): number {
  const { tree } = frame.meaning;
  const left = tree.firstChildren[node];
  const right = tree.nextSiblings[left];
  const before = compiler.inUse;
  const parts = [compiler.expression(frame, left), compiler.expression(frame, right)];
  compiler.inUse = before;
  const slot = compiler.slotFor(1, target);
  compiler.site(
    tree.operators[node] === Operator.Multiply
      ? new BundleSite(parts[0], parts[1], slot, left)
      : new JoinSite(parts, slot),
  );
  return slot;
}

/** `[a, b]` */
export function compileList(compiler: Compiler, frame: Frame, node: number, target: number): number {
  const { tree } = frame.meaning;
  const items: number[] = [];
  const before = compiler.inUse;
  for (let item = tree.firstChildren[node]; item >= 0; item = tree.nextSiblings[item]) {
    items.push(compiler.expression(frame, item));
  }
  compiler.inUse = before;
  const slot = compiler.slotFor(1, target);
  compiler.site(new ListSite(itemOf(typeIn(frame, node)), items, slot));
  return slot;
}
