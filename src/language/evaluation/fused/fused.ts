/**
 * Instructions of fused code: operations alone, then each with each that takes its result. `SubtractFrom` takes it from
 * another number, `DivideInto` divides another number by it. An instruction holds what it does with the slot it
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

/** An instruction is four integers, because a loop spends most of its time on reading them. */
export const fusedLength = 4;

/** In the first integer the slot lies above the bits of what is done. */
export const operationBits = 5;
export const operationMask = (1 << operationBits) - 1;
