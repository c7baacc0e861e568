import { Node } from '../syntax/tree';
import type { Checker } from './checker';
import { check, notAvailable } from './expressions';
import type { Type } from './type';

/** `value ± limits` */
export function checkPlusMinus(c: Checker, node: number): Type {
  check(c, c.tree.firstChildren[node]);
  return notAvailable(c, node, '`±`');
}

/** `value by meter` */
export function checkReading(c: Checker, node: number): Type {
  const value = c.tree.firstChildren[node];
  check(c, value);
  const meter = c.tree.nextSiblings[value];
  if (meter >= 0 && c.tree.kinds[meter] === Node.Name) {
    check(c, meter);
  }
  return notAvailable(c, node, 'A reading with its meter (`by`)');
}
