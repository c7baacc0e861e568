import { nameEnd, skipBlanks } from '../scanning/characters';
import { isAssign } from '../scanning/line-starts';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import { reportEqualsForColon } from './brackets';
import { readExpression } from './expressions';
import { endLine } from './line-rest';
import { isWordToken } from './operands';
import type { Reader } from './reader';

/**
 * Reads the indented lines below a statement, one by one, each with `read`, which returns a node or -1.
 * Links the nodes behind `last` and returns the last of them.
 */
export function readIndented(r: Reader, last: number, read: (r: Reader) => number): number {
  const { tree } = r;
  const { indent, inBlock } = r;
  r.inBlock = true;
  let end = last;
  while (r.token === Token.LineEnd && r.indentBelow() > indent) {
    r.indent = r.indentBelow();
    r.beginLine();
    r.startLine();
    const node = read(r);
    if (node >= 0) {
      end = tree.link(end, node);
    }
  }
  r.inBlock = inBlock;
  r.indent = indent;
  return end;
}

/** `name = f` and the indented `field: expression` lines below it; -1 when what stands below are no fields. */
export function readBlock(r: Reader, start: number, name: number, callee: number): number {
  const { tree, text, codes } = r;
  const below = r.lookBelow();
  const end = nameEnd(codes, below);
  const next = skipBlanks(codes, end);
  const isField = end > below && (next >= text.length || ':\n\r'.includes(text.charAt(next)) || isAssign(codes, next));
  if (!isField) {
    return -1;
  }
  tree.link(name, callee);
  const last = readIndented(r, callee, readField);
  return tree.parent(Node.BlockCall, start, Math.max(tree.ends[last], r.lastEnd), name);
}

/** `field: expression` */
function readField(r: Reader): number {
  const { tree, start } = r;
  if (!isWordToken(r.token)) {
    r.report(
      'missing-field',
      r.start,
      r.end,
      `Found \`${r.currentText}\` where the name of a field was expected. The lines of a call laid out below its name read \`field: value\`.`,
    );
    return r.skipTo();
  }
  const name = r.take(Node.Name);
  let value: number;
  if (r.token === Token.Colon || r.token === Token.Assign) {
    if (r.token === Token.Assign) {
      reportEqualsForColon(r, 'a field');
    }
    r.advance();
    r.runOn();
    value = readExpression(r);
  } else {
    r.report(
      'missing-colon',
      tree.starts[name],
      tree.ends[name],
      `The field \`${r.text.slice(start, tree.ends[name])}\` has no value. Write a colon and its value behind the name.`,
    );
    const rest = r.skipTo();
    value = rest < 0 ? r.absent() : rest;
  }
  tree.link(name, value);
  const node = tree.parent(Node.Field, start, Math.max(r.lastEnd, tree.ends[value]), name);
  return endLine(r, node);
}
