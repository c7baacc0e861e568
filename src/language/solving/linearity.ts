import { Operator } from '../syntax/tree';
import type { Expression } from './expression';

/** True when unknowns stand in an expression only added up and multiplied by what holds none of them. */
export const isLinear = (expression: Expression, unknowns: ReadonlySet<string>): boolean =>
  degreeOf(expression, unknowns) <= 1;

function degreeOf(expression: Expression, unknowns: ReadonlySet<string>): number {
  switch (expression.kind) {
    case 'number':
      return 0;
    case 'unknown':
      return unknowns.has(expression.name) ? 1 : 0;
    case 'written':
      return [...expression.names].some((name) => unknowns.has(name)) || expression.put ? Number.POSITIVE_INFINITY : 0;
    case 'negated':
    case 'converted':
      return degreeOf(expression.operand, unknowns);
    case 'call':
      return degreeOf(expression.argument, unknowns) === 0 ? 0 : Number.POSITIVE_INFINITY;
    case 'binary': {
      const [left, right] = [degreeOf(expression.left, unknowns), degreeOf(expression.right, unknowns)];
      switch (expression.operator) {
        case Operator.Add:
        case Operator.Subtract:
          return Math.max(left, right);
        case Operator.Multiply:
          return left + right;
        case Operator.Divide:
          return right === 0 ? left : Number.POSITIVE_INFINITY;
        default:
          return left + right === 0 ? 0 : Number.POSITIVE_INFINITY;
      }
    }
  }
}
