import type { Token } from '../scanning/token';
import type { Reader } from './reader';

/** What stands left on the line is reported once and kept in an Error node behind the statement's other children. */
export function endLine(r: Reader, node: number, ...stops: readonly Token[]): number {
  r.depth = 0;
  if (r.isOver || stops.includes(r.token)) {
    return node;
  }
  if (!r.isLineBroken) {
    reportRest(r);
  }
  const rest = r.skipTo(...stops);
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

function reportRest(r: Reader): void {
  const { text, start, lastEnd } = r;
  const from = start;
  let end = start;
  for (let at = start; at < text.length && text[at] !== '\n' && text[at] !== '\r'; at++) {
    if (text.startsWith('//', at)) {
      break;
    }
    end = text[at] === ' ' || text[at] === '\t' ? end : at + 1;
  }
  const found = text.slice(from, end);
  const before = text.slice(r.lastStart, lastEnd);
  r.report(
    'unexpected-text',
    from,
    end,
    `Found \`${shorten(found)}\` behind \`${shorten(before)}\`, where the line should end or an operator follow. Take it out, write an operator before it, or begin a new line.`,
  );
}

const shorten = (text: string): string => (text.length > 30 ? `${text.slice(0, 29)}…` : text);
