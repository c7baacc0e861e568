import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readIndented } from './blocks';
import { readExpression, Strength } from './expressions';
import { endLine } from './line-rest';
import { readRange } from './ranges';
import { type Reader, replace } from './reader';

/** `solve a, b in 1 ft .. 9 ft` and the indented equations below it. */
export function readSolve(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  const first = readUnknown(r);
  let last = first;
  while (r.at(Token.Comma)) {
    r.advance();
    r.runOn();
    last = tree.link(last, readUnknown(r));
  }
  if (!r.isOver) {
    if (!r.isLineBroken) {
      r.report(
        'unexpected-text',
        r.start,
        r.end,
        `Found \`${r.currentText}\` behind the unknowns. \`solve\` is followed by names parted by commas; the equations stand indented below.`,
      );
    }
    last = tree.link(last, r.skipTo());
  }
  const end = readIndented(r, last, readEquation);
  if (end === last && !r.isLineBroken) {
    r.report(
      'missing-equations',
      start,
      r.lastEnd,
      'There is nothing to solve. Write the equations below this line, each indented by two spaces: `left == right`.',
    );
  }
  return tree.parent(Node.Solve, start, Math.max(tree.ends[end], r.lastEnd), first);
}

/** `name` or `name in low .. high` */
function readUnknown(r: Reader): number {
  const { tree, start } = r;
  if (!r.at(Token.Name)) {
    if (!r.isLineBroken) {
      r.report(
        'missing-name',
        r.isOver ? r.lastStart : r.start,
        r.isOver ? r.lastEnd : r.end,
        '`solve` is followed by the names of the unknowns. Write them as in `solve current, power`.',
      );
    }
    return r.isOver ? r.absent() : r.take(Node.Error);
  }
  const name = r.take(Node.Name);
  if (r.at(Token.In)) {
    r.advance();
    tree.link(name, readRange(r, '..'));
  }
  return tree.parent(Node.Unknown, start, r.lastEnd, name);
}

/** `left == right` */
function readEquation(r: Reader): number {
  const { tree, start } = r;
  const left = readExpression(r, Strength.Convert);
  let right: number;
  if (r.at(Token.Equal) || r.at(Token.Assign)) {
    if (r.at(Token.Assign)) {
      r.report(
        'equals-for-comparison',
        r.start,
        r.end,
        'The two sides of an equation stand on both sides of `==`. Write `==` for `=`.',
        replace('Write ==', r.start, r.end, '=='),
      );
    }
    r.advance();
    r.runOn();
    right = readExpression(r, Strength.Convert);
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-equals',
        tree.starts[left],
        tree.ends[left],
        'An equation has two sides, and only one stands here. Write `==` and the other side.',
      );
    }
    const rest = r.skipTo();
    right = rest < 0 ? r.absent() : rest;
  }
  tree.link(left, right);
  const node = tree.parent(Node.Equation, start, Math.max(r.lastEnd, tree.ends[right]), left);
  return endLine(r, node);
}
