import { Operator } from '../syntax/tree';

/**
 * What the machine can do. An instruction is four integers: the operation, the slot it writes and two operands, which
 * are slots unless said otherwise. Answers of yes or no are numbers too: 1 yes, 0 no, 0.5 cannot tell.
 */
export enum Operation {
  /** Number and object of slot a. */
  Copy,
  Add,
  Subtract,
  Multiply,
  Divide,
  Power,
  Negate,
  /** a is a slot, b an index into the functions of one number. */
  One,
  Less,
  LessOrEqual,
  Greater,
  GreaterOrEqual,
  Equal,
  NotEqual,
  And,
  Or,
  Not,
  /** Runs site a, which writes its own slots. */
  Site,
  /** Goes on a instructions further. */
  Jump,
  /** Goes on a instructions further where the answer in the first slot is no, b where it is neither yes nor no. */
  Branch,
  /** Marks a slots from the first one on as having no value. */
  NoValue,
}

export const instructionLength = 4;

/**
 * Two quantities this near, relative to the larger one, count as equal: a foot and 0.3048 m differ in the last bit
 * after conversion, and a check must not turn on that.
 */
export const nearness = 1e-12;

/** What the machine does for an operator between two expressions. */
export const operationOf: Partial<Record<Operator, Operation>> = {
  [Operator.Add]: Operation.Add,
  [Operator.Subtract]: Operation.Subtract,
  [Operator.Multiply]: Operation.Multiply,
  [Operator.Divide]: Operation.Divide,
  [Operator.Power]: Operation.Power,
  [Operator.Equal]: Operation.Equal,
  [Operator.NotEqual]: Operation.NotEqual,
  [Operator.Less]: Operation.Less,
  [Operator.LessOrEqual]: Operation.LessOrEqual,
  [Operator.Greater]: Operation.Greater,
  [Operator.GreaterOrEqual]: Operation.GreaterOrEqual,
  [Operator.And]: Operation.And,
  [Operator.Or]: Operation.Or,
};
