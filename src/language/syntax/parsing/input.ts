import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readExpression } from './expressions';
import { readLabel, readStatementName } from './labels';
import { readRange } from './ranges';
import type { Reader } from './reader';

/** `input run = 85 ft from 5 ft to 400 ft "one-way length"` */
export function readInput(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  const name = readStatementName(r, 'input', 'input run = 85 ft');
  let last = name;
  if (r.token === Token.Assign) {
    r.advance();
    r.runOn();
    last = tree.link(last, readExpression(r));
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-equals',
        r.lastStart,
        r.lastEnd,
        'An input has a value to begin with. Write `=` and the value behind its name.',
      );
    }
    last = tree.link(last, r.absent());
  }
  if (r.isWord('from')) {
    r.advance();
    last = tree.link(last, readRange(r, 'to'));
  }
  readLabel(r, last, 'meaning of an input');
  return tree.parent(Node.Input, start, r.lastEnd, name);
}
