import { misfit } from './arithmetic';
import type { Checker } from './checker';
import { describe } from './describe';
import { check } from './expressions';
import type { Type } from './type';
import { type QuantityOf, unknownType } from './types';

type Bound = Extract<Type, { kind: 'bound' }>;

/** `OL 60 MΩ`: a reading beyond the meter is more than the end of its range, and nothing else is known of it. */
export function checkOverRange(c: Checker, node: number): Type {
  const end = c.tree.firstChildren[node];
  if (end < 0) {
    c.report(
      'over-range',
      node,
      `${c.quote(node)} says only that the meter could show no more. Write the end of its range behind it, such as \`OL 60 MΩ\`: the reading then counts as more than that.`,
    );
    return unknownType;
  }
  const type = check(c, end);
  if (type.kind !== 'quantity' && type.kind !== 'unknown') {
    c.report('over-range', end, `${c.quote(end)} is ${describe(type)}: a range ends at a quantity, such as 60 MΩ.`);
  }
  return type.kind === 'quantity' ? boundOf(type) : unknownType;
}

const bounds = new Map<QuantityOf, Bound>();

function boundOf(end: QuantityOf): Bound {
  let bound = bounds.get(end);
  if (!bound) {
    bound = { kind: 'bound', end };
    bounds.set(end, bound);
  }
  return bound;
}

/** The quantity that a bound is one of, or the quantity itself; undefined for anything else. */
export const reachOf = (type: Type): QuantityOf | undefined =>
  type.kind === 'bound' ? type.end : type.kind === 'quantity' ? type : undefined;

/** True when two bounds are of like quantities. */
export const areLike = (a: Bound, b: Bound): boolean => misfit(a.end.quantity, b.end.quantity) === undefined;

/** Says that a reading over range stands where a number is needed. */
export function reportOverRange(c: Checker, node: number): void {
  c.report(
    'over-range',
    node,
    `${c.quote(node)} is a reading over range: only that it is more than the end of the range is known, and nothing can be worked out from that. Compare it with a limit, or read it again with a meter that reaches further.`,
  );
}
