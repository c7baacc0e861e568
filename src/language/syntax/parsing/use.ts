import { Token } from '../scanning/token';
import { Node } from '../tree';
import { missingName, readStatementName } from './labels';
import { readText } from './operands';
import type { Reader } from './reader';

/** `use element, supply from "kiln.kft.md"` */
export function readUse(r: Reader, start: number): number {
  const { tree } = r;
  const example = 'use element from "kiln.kft.md"';
  r.advance();
  const first = r.isWord('from') ? missingName(r, 'use', example) : readStatementName(r, 'use', example);
  let last = first;
  while (r.token === Token.Comma) {
    r.advance();
    last = tree.link(last, readStatementName(r, 'use', example));
  }
  if (r.isWord('from')) {
    r.advance();
  }
  if (r.token === Token.Text) {
    last = tree.link(last, readText(r));
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-file',
        r.lastStart,
        r.lastEnd,
        `\`use\` takes names from another sheet, and the sheet is missing. Write it as in \`${example}\`.`,
      );
    }
    last = tree.link(last, r.absent());
  }
  return tree.parent(Node.Use, start, r.lastEnd, first);
}
