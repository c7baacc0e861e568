import type { Type } from '../checking/type';
import { plainNumberType, type QuantityOf } from '../checking/types';
import type { FunctionDefinition, Parameter } from '../library';

/** How the evaluator does a function of plain mathematics, on numbers in the coherent SI unit. */
export type Operation =
  | {
      readonly kind: 'one';
      readonly compute: (x: number) => number;
      /** Derivative. */
      readonly slope: (x: number) => number;
    }
  | {
      readonly kind: 'two';
      readonly compute: (x: number, y: number) => number;
      readonly slopes: (x: number, y: number) => readonly [number, number];
    }
  /** Over any number of values or one list. */
  | {
      readonly kind: 'many';
      readonly compute: (values: ArrayLike<number>) => number;
      /** Derivative by each value. */
      readonly slopes?: (values: ArrayLike<number>) => ArrayLike<number>;
      /** True where values and result are answers of yes or no: 1, 0, 0.5 for cannot tell. */
      readonly isAnswer?: true;
    }
  /** Whether each item of a list has a value. */
  | { readonly kind: 'known' };

/** A function of plain mathematics: a library function that the evaluator does without a call. */
export interface MathematicsFunction extends FunctionDefinition {
  readonly operation: Operation;
  /** Why it may have no value, for a message that reads after its name. */
  readonly undefinedWhere: string;
}

type Inference = NonNullable<FunctionDefinition['infer']>;

interface Declaration {
  readonly name: string;
  readonly summary: string;
  readonly parameters: Readonly<Record<string, Parameter>>;
  readonly infer: Inference;
  readonly gives: string;
  readonly undefinedWhere?: string;
  readonly operation: Operation;
  readonly examples: FunctionDefinition['examples'];
}

export function defineMathematics(declaration: Declaration): MathematicsFunction {
  const { operation, gives, undefinedWhere = 'is too large or too small to compute', ...rest } = declaration;
  const names = Object.keys(rest.parameters);
  const evaluate = (args: Readonly<Record<string, number | readonly number[]>>): number => {
    const [x, y] = names.map((name) => args[name]);
    switch (operation.kind) {
      case 'one':
        return operation.compute(x as number);
      case 'two':
        return operation.compute(x as number, y as number);
      case 'many':
        return operation.compute(x as readonly number[]);
      case 'known':
        return Number.NaN; // The evaluator does it; a list with missing items never gets here.
    }
  };
  return {
    ...rest,
    operation,
    undefinedWhere,
    result: { unit: '', meaning: gives },
    sources: ['mathematics'],
    evaluate: evaluate as FunctionDefinition['evaluate'],
  };
}

export const anyQuantity = (meaning: string): Parameter => ({ units: [], meaning });
export const anyNumber = (meaning: string): Parameter => ({ unit: '', meaning });
export const manyValues: Parameter = { items: 'any', repeated: true, meaning: 'values of any kind, or one list' };
export const manyAnswers: Parameter = { items: 'answers', repeated: true, meaning: 'answers, or one list of them' };
export const oneList: Parameter = { items: 'any', meaning: 'a list, such as a column of a schedule' };
export const manyQuantities: Parameter = { units: [], repeated: true, meaning: 'values of one kind, or one list' };

/** A plain number, whatever the arguments. */
export const givesNumber: Inference = () => plainNumberType();

/** The items of the arguments: those of the one list, or the arguments themselves. */
export function itemsOf(types: readonly Type[]): readonly Type[] | { problem: string; argument: number } {
  const list = types.findIndex((type) => type.kind === 'list');
  if (list < 0) {
    return types;
  }
  return types.length === 1
    ? [(types[0] as Extract<Type, { kind: 'list' }>).element]
    : { problem: 'write either one list or the values themselves.', argument: list };
}

export const isQuantity = (type: Type): type is QuantityOf => type.kind === 'quantity';
