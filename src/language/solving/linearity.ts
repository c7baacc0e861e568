import { Operator, type SyntaxTree } from '../syntax/tree';
import { type Expression, holds } from './expression';

/** True when the unknowns stand in an expression only added up and multiplied by what holds none of them. */
export const isLinear = (tree: SyntaxTree, expression: Expression, unknowns: readonly string[]): boolean =>
  degreeOf(tree, expression, unknowns) <= 1;

function degreeOf(tree: SyntaxTree, expression: Expression, unknowns: readonly string[]): number {
  if (!unknowns.some((name) => holds(tree, expression, name))) {
    return 0;
  }
  const inner = (part: Expression) => degreeOf(tree, part, unknowns);
  switch (expression.kind) {
    case 'unknown':
      return 1;
    case 'negated':
    case 'converted':
      return inner(expression.operand);
    case 'binary': {
      const [left, right] = [inner(expression.left), inner(expression.right)];
      switch (expression.operator) {
        case Operator.Add:
        case Operator.Subtract:
          return Math.max(left, right);
        case Operator.Multiply:
          return left + right;
        case Operator.Divide:
          return right === 0 ? left : Number.POSITIVE_INFINITY;
        default:
          return Number.POSITIVE_INFINITY;
      }
    }
    default:
      return Number.POSITIVE_INFINITY;
  }
}
