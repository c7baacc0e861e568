import { Operator } from '../syntax/tree';

/** The result of an operation on two literals, worked out before anything runs. */
export function fold(operator: Operator, a: number, b: number): number {
  switch (operator) {
    case Operator.Add:
      return a + b;
    case Operator.Subtract:
      return a - b;
    case Operator.Multiply:
      return a * b;
    case Operator.Divide:
      return a / b;
    default:
      return a ** b;
  }
}
