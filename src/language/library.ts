import type { ProblemCode, TableReference } from '../text';
import type { ObjectType, Type } from './checking/type';
import type { AssumptionStep, ChoiceStep, Step } from './evaluation/trace';
import type { Vocabulary } from './syntax/vocabulary';

/**
 * The contract between the language and what its cells can use. A function is one object: checking, hover,
 * completion, the reference page, shown maths and its tests all come from it.
 */
export interface Library {
  readonly vocabulary: Vocabulary;
  readonly functions: ReadonlyMap<string, FunctionDefinition>;
  /** Reads a size and its words: `12 AWG` and [`Cu`, `THHN`]. Called once per designation, before anything runs. */
  readonly designation: DesignationReader;
  /** Functions whose parameters people lay out as columns: each row of such a schedule is looked at as a call. */
  readonly rowShapes?: readonly RowShape[];
  /** `US` or `SI`: which units derived lengths and areas are shown in. */
  readonly system: 'US' | 'SI';
  /** Handed to each function as `call.settings`; its shape is the functions' own affair. */
  readonly settings: unknown;
}

/** A schedule has this shape when it has at least one of the columns in each of the groups. */
export interface RowShape {
  readonly function: string;
  readonly columns: readonly (readonly string[])[];
}

export interface DesignationReader {
  readonly type: ObjectType;
  read(size: string, words: readonly string[]): DesignationResult;
}

export type DesignationResult =
  | { readonly value: unknown; readonly assumptions: readonly string[] }
  /** What is wrong, and what to write instead; `word` is the index of the word at fault, absent for the size. */
  | {
      readonly problem: string;
      readonly code: ProblemCode;
      readonly word?: number;
      readonly replacements?: readonly string[];
    };

/** A parameter's type as its function sees it. */
export type ParameterType =
  /**
   * The function gets a number in this unit. In a list, `interval` hands over each item as an `Interval`: for a function
   * that must promise something and so may not take a reading at its word.
   */
  | { readonly unit: string; readonly interval?: true }
  /**
   * Any of these units; the function gets `{ value, unit }` in the one whose dimension and kind fit. An empty list takes
   * any quantity, and the function (which then has `infer`) gets its number in the coherent SI unit.
   */
  | { readonly units: readonly string[] }
  | { readonly choice: readonly string[] }
  | { readonly yesNo: true }
  | { readonly object: ObjectType }
  | { readonly listOf: ParameterType }
  /** Values of any type, or answers of yes or no: each by itself or in one list. */
  | { readonly items: 'any' | 'answers' }
  /** `verbatim` where a name of the trade reads like arithmetic: `1-1/4` arrives as it is written, its spaces left out. */
  | { readonly text: true; readonly verbatim?: true };

/** A quantity with the ends of its 95 % interval, all alike where it is certain. */
export interface Interval {
  /** Moves while the doubt of a result is worked out; the other three hold still. */
  readonly value: number;
  readonly stated: number;
  readonly low: number;
  readonly high: number;
}

export type Parameter = ParameterType & {
  /** What it is, in words that read after its name: `one-way length of the run`. */
  readonly meaning: string;
  /** True for one that is written `name: value` only. */
  readonly named?: true;
  /** Used, and stated in the trace, when the argument is not written; in `unit`. */
  readonly default?: number | string | boolean;
  /** True for a last positional one that may be written any number of times; the function then gets a list. */
  readonly repeated?: true;
  /** True when it may be left out with no default; the function then gets `undefined`. */
  readonly optional?: true;
  /** The letter symbol of the quantity in formulas: `I`, `R_75`. */
  readonly symbol?: string;
  /** Bounds in `unit`; a value outside is a problem at the argument. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
};

export type ResultType =
  | { readonly unit: string; readonly unitSI?: string }
  | { readonly yesNo: true }
  | { readonly choice: readonly string[] }
  | { readonly object: ObjectType }
  | { readonly listOf: ResultType }
  | { readonly text: true };

export type RecordResult = { readonly record: Readonly<Record<string, ResultType & { readonly meaning: string }>> };

export interface FunctionDefinition {
  readonly name: string;
  readonly summary: string;
  readonly parameters: Readonly<Record<string, Parameter>>;
  readonly result: (ResultType & { readonly meaning: string }) | RecordResult;
  /** As people write it; for the reference page. */
  readonly formula?: string;
  readonly assumptions?: readonly string[];
  /** Standards, tables and handbooks; `common practice` or `memory` where there is none. */
  readonly sources: readonly string[];
  /** Executed by the tests: the cell's text and what its last statement gives, as display text. */
  readonly examples: readonly { readonly text: string; readonly gives: string }[];
  /**
   * Must not throw and must depend on its arguments and `call.settings` alone. Quantities are numbers in the
   * parameter's unit, and so is the result. A record's missing field is an `Absent`.
   */
  readonly evaluate: (args: never, call: Call) => unknown;
  /** For a result whose type follows from its arguments (`min`, `sqrt`); replaces `result` in checking. */
  readonly infer?: (args: readonly Type[]) => Type | { readonly problem: string; readonly argument?: number };
}

/** Says that a function has no result, at which argument and why. Not an exception: functions return it. */
export class Failure {
  constructor(
    readonly message: string,
    readonly parameter?: string,
    readonly code: ProblemCode = 'no-result',
  ) {}
}

/** Stands in a record for a field that has no value. */
export class Absent {
  constructor(readonly because: string) {}
}

/** What a function may tell beside its result. All of it is skipped when nobody watches. */
export interface Call {
  /** True when facts are wanted; build them only then. */
  readonly watched: boolean;
  /** True when steps are wanted as well, for shown working; build them only then. */
  readonly shown: boolean;
  /** What the library was made with; the trade library casts it to its own settings. */
  readonly settings: unknown;
  /** Which units steps are shown in; US where nobody says. */
  readonly system?: 'US' | 'SI';
  step(step: Step): void;
  assume(text: AssumptionStep['text']): void;
  choose(step: Omit<ChoiceStep, 'kind'>): void;
  table(step: {
    symbol?: string;
    value: number | string;
    unit?: string;
    source: TableReference;
    row: readonly (readonly [string, string])[];
    remark?: string;
  }): void;
  /** A fact for lints, keyed by its `about`. */
  fact(fact: Fact): void;
  /** True when the argument was written in the sheet and not taken from the default. */
  given(parameter: string): boolean;
}

/** What a function found out, for lints to read; each trade function declares its own shape. */
export interface Fact {
  readonly about: string;
}

type Scalar<P> = P extends { readonly units: readonly (infer U)[] }
  ? { readonly value: number; readonly unit: U }
  : P extends { readonly unit: string }
    ? P extends { readonly interval: true }
      ? Interval
      : number
    : P extends { readonly choice: readonly (infer W)[] }
      ? W
      : P extends { readonly yesNo: true }
        ? boolean
        : P extends { readonly object: ObjectType<infer T> }
          ? T
          : P extends { readonly listOf: infer E }
            ? readonly Scalar<E>[]
            : P extends { readonly text: true }
              ? string
              : never;

export type ArgumentsOf<P> = {
  readonly [K in keyof P]: P[K] extends { readonly optional: true } ? Scalar<P[K]> | undefined : Scalar<P[K]>;
};

export type ResultOf<R> = R extends { readonly record: infer Fields }
  ? { readonly [K in keyof Fields]: Scalar<Fields[K]> | Absent } | Failure
  : Scalar<R> | Failure;

/** Declares a function; the argument and result types of `evaluate` follow from `parameters` and `result`. */
export function defineFunction<
  const P extends Readonly<Record<string, Parameter>>,
  const R extends FunctionDefinition['result'],
>(
  definition: Omit<FunctionDefinition, 'parameters' | 'result' | 'evaluate'> & {
    readonly parameters: P;
    readonly result: R;
    readonly evaluate: (args: ArgumentsOf<P>, call: Call) => ResultOf<R>;
  },
): FunctionDefinition & { readonly evaluate: (args: ArgumentsOf<P>, call: Call) => ResultOf<R> } {
  return definition as never;
}
