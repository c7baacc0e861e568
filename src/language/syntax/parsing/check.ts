import { Node } from '../tree';
import { readExpression } from './expressions';
import { readLabel } from './labels';
import type { Reader } from './reader';

/** `check expression "label"` */
export function readCheck(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  const condition = readExpression(r);
  readLabel(r, condition, 'label');
  return tree.parent(Node.Check, start, Math.max(r.lastEnd, tree.ends[condition]), condition);
}
