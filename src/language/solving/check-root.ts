import { misfit } from '../checking/arithmetic';
import { Checker } from '../checking/checker';
import { describe } from '../checking/describe';
import { check } from '../checking/expressions';
import type { Type } from '../checking/type';
import { unknownType } from '../checking/types';
import { children } from '../syntax/tree';

/** A search between bounds: the unknown is of the bounds' type, and both sides are alike. */
export function checkRoot(c: Checker, node: number): Type {
  const [unknown, low, high, left, right] = children(c.tree, node);
  const type = check(c, low);
  const upper = check(c, high);
  if (type.kind !== 'quantity' || upper.kind !== 'quantity') {
    return unknownType;
  }
  if (misfit(type.quantity, upper.quantity)) {
    c.report(
      'unlike-quantities',
      high,
      `${c.quote(high)} is ${describe(upper)}, but ${c.quote(low)} is ${describe(type)}: both bounds are of one kind.`,
    );
    return unknownType;
  }
  const inner = new Checker(c.context, c.meaning, new Map([...(c.locals ?? []), [c.text(unknown), type]]), c.within);
  const a = check(inner, left);
  const b = check(inner, right);
  c.diagnostics.push(...inner.diagnostics);
  c.namesMissing ||= inner.namesMissing;
  if (inner.diagnostics.length > 0 || a.kind === 'unknown' || b.kind === 'unknown') {
    return unknownType;
  }
  if (a.kind !== 'quantity' || b.kind !== 'quantity' || misfit(a.quantity, b.quantity)) {
    c.report(
      'unlike-quantities',
      node,
      `The left side is ${describe(a)}, the right side is ${describe(b)}: only like quantities can be equal.`,
    );
    return unknownType;
  }
  return type;
}
