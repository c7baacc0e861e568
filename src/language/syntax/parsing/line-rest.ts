import { reportHabit } from './habits';
import type { Reader } from './reader';

/** What stands left on the line is reported once and kept in an Error node behind the statement's other children. */
export function endLine(r: Reader, node: number): number {
  r.depth = 0;
  if (r.isOver) {
    return node;
  }
  const rest = r.skipTo();
  if (!r.isLineBroken && !reportHabit(r, r.tree.starts[rest])) {
    reportRest(r, r.tree.starts[rest]);
  }
  const { tree } = r;
  let last = tree.firstChildren[node];
  while (last >= 0 && tree.nextSiblings[last] >= 0) {
    last = tree.nextSiblings[last];
  }
  if (last >= 0) {
    tree.link(last, rest);
  }
  tree.ends[node] = Math.max(tree.ends[node], tree.ends[rest]);
  return node;
}

function reportRest(r: Reader, from: number): void {
  const found = r.text.slice(from, r.lastEnd);
  r.report(
    'unexpected-text',
    from,
    r.lastEnd,
    `Found \`${shorten(found)}\` where the line should end or an operator follow. Take it out, write an operator before it, or begin a new line.`,
  );
}

const shorten = (text: string): string => (text.length > 30 ? `${text.slice(0, 29)}…` : text);
