import { hyphenatedEnd, nameEnd } from '../scanning/characters';
import { Node } from '../tree';
import { readLabel, readStatementName } from './labels';
import type { Reader } from './reader';

/** `allow lint-id "reason"` */
export function readAllow(r: Reader, start: number): number {
  const { tree, text, codes } = r;
  const example = 'allow voltage-drop "sized by the supplier"';
  r.advance();
  let lint: number;
  if (nameEnd(codes, r.start) > r.start) {
    const end = hyphenatedEnd(codes, r.start);
    lint = tree.name(r.start, end);
    r.lastStart = r.start;
    r.resume(end);
  } else {
    lint = readStatementName(r, 'allow', example);
  }
  const last = readLabel(r, lint, 'reason');
  const isEmpty = last !== lint && /^"\s*"$/.test(text.slice(tree.starts[last], tree.ends[last]));
  if ((last === lint || isEmpty) && !r.isLineBroken && r.isOver) {
    r.report(
      'missing-reason',
      tree.starts[last],
      tree.ends[last],
      `A finding is allowed for a reason, which the report prints. Write it in quotes behind the name: \`${example}\`.`,
    );
  }
  return tree.parent(Node.Allow, start, r.lastEnd, lint);
}
