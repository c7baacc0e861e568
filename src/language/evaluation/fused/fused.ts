/**
 * Instructions of fused code: operations alone, then each with each that takes its result. `SubtractFrom` takes it from
 * another number, `DivideInto` divides another number by it. An instruction is five integers: what it does, the slot it
 * writes, both operands of the first operation, and the other operand of the second.
 */
export enum Fused {
  Copy,
  Negate,
  Add,
  Subtract,
  Multiply,
  Divide,
  AddAdd,
  AddMultiply,
  AddSubtract,
  AddSubtractFrom,
  AddDivide,
  AddDivideInto,
  SubtractAdd,
  SubtractMultiply,
  SubtractSubtract,
  SubtractSubtractFrom,
  SubtractDivide,
  SubtractDivideInto,
  MultiplyAdd,
  MultiplyMultiply,
  MultiplySubtract,
  MultiplySubtractFrom,
  MultiplyDivide,
  MultiplyDivideInto,
  DivideAdd,
  DivideMultiply,
  DivideSubtract,
  DivideSubtractFrom,
  DivideDivide,
  DivideDivideInto,
}

export const fusedLength = 5;
