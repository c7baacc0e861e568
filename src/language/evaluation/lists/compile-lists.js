import { itemOf } from '../../checking/lists';
import { Node, Operator, textOf } from '../../syntax/tree';
import { instructionLength, Operation } from '../operations';
import { BundleSite, JoinSite } from './bundle-sites';
import { MapSite } from './map-site';
import { WhereSite } from './where-site';
/** True for an operator that is applied to each item of a list. */
export function isOverItems({ tree, types }, node) {
  const kind = tree.kinds[node];
  if (kind !== Node.Binary && kind !== Node.Unary) {
    return false;
  }
  const type = types[node];
  return type?.kind === 'list' && type.element.kind !== 'object';
}
/** Compiles operators over lists: all of them once, for one item. */
export function compileOverItems(compiler, frame, node, target) {
  const { meaning, locals } = frame;
  const { tree, types } = meaning;
  const before = compiler.inUse;
  const inputs = [];
  const items = new Map();
  const gather = (part) => {
    const kind = tree.kinds[part];
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
    items.set(part, isList ? inputs.at(-1).item : slot);
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
export function compileAside(compiler, frame, node) {
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
export function compileWhere(compiler, frame, node, target) {
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
export function compileBundle(compiler, frame, node, target) {
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
