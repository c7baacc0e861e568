import type { Span, TableReference } from '../../text';
import type { QuantityValue, Value } from './value';

/**
 * How a statement came to its result, as data: no rounding, no typesetting. `display/` makes words and maths of it.
 * Built only for what is shown.
 */
export interface Trace {
  readonly steps: readonly Step[];
}

/** How one row of a schedule was worked out, as an example of all. */
export interface RowStep {
  readonly kind: 'row';
  /** The row in words: ``row 1 (`P1`)``. */
  readonly row: string;
  readonly steps: readonly Step[];
}

export type Step =
  | RowStep
  | FormulaStep
  | TableStep
  | ChoiceStep
  | AssumptionStep
  | ComparisonStep
  | CallStep
  | TakenStep
  | EquationStep
  | SolutionStep;

/** `symbol = formula = formula with its numbers = result` */
export interface FormulaStep {
  readonly kind: 'formula';
  readonly symbol?: LetterSymbol;
  readonly formula: Maths;
  /** The same shape with each name replaced by its value; absent when nothing would change. */
  readonly substituted?: Maths;
  readonly result: Value;
  readonly remark?: string;
}

/** A value read from a published table, with the row it stands in. */
export interface TableStep {
  readonly kind: 'table';
  readonly symbol?: LetterSymbol;
  readonly result: Value;
  readonly source: TableReference;
  /** Column and cell as printed, the key columns first. */
  readonly row: readonly (readonly [column: string, cell: string])[];
  readonly remark?: string;
}

/** Something chosen by a rule: a size, a rating, a column. */
export interface ChoiceStep {
  readonly kind: 'choice';
  readonly symbol?: LetterSymbol;
  readonly result: Value;
  readonly because: string;
  readonly rule?: string;
}

/** Something taken as true that the sheet did not say. */
export interface AssumptionStep {
  readonly kind: 'assumption';
  readonly text: string;
}

/** A check: both sides, the margin and the verdict. */
export interface ComparisonStep {
  readonly kind: 'comparison';
  readonly formula: Maths;
  readonly substituted?: Maths;
  readonly result: Value;
  /** Right side minus left side for `<`, left minus right for `>`: positive when it passes. */
  readonly margin?: Value;
  /** Where what is known of a quantity is not certain and decides the verdict. */
  readonly doubtful?: DoubtfulComparison;
}

/** Two quantities of which one at least is not certain. */
export interface DoubtfulComparison {
  readonly operator: '<' | '<=' | '>' | '>=' | '==' | '!=';
  readonly left: QuantityValue;
  readonly right: QuantityValue;
  /** Right minus left with its own doubt, which lies where both sides hang on the same reading; absent over range. */
  readonly difference?: QuantityValue;
}

/** What a function did, step by step. */
export interface CallStep {
  readonly kind: 'call';
  readonly function: string;
  readonly span: Span;
  readonly arguments: readonly { readonly name: string; readonly value: Value; readonly given: boolean }[];
  readonly steps: readonly Step[];
  readonly result: Value;
}

/** A value taken from another sheet, with how it came about there. */
export interface TakenStep {
  readonly kind: 'taken';
  readonly symbol?: LetterSymbol;
  /** As the sheet names it. */
  readonly file: string;
  readonly steps: readonly Step[];
  /** Tables and assumptions behind the names that went into it there. */
  readonly behind: readonly Step[];
  readonly result: Value;
}

/** An equation that an unknown is found from, before it is turned round. */
export interface EquationStep {
  readonly kind: 'equation';
  readonly left: Maths;
  readonly right: Maths;
}

/** An unknown that no formula gives. */
export interface SolutionStep {
  readonly kind: 'solution';
  readonly symbol?: LetterSymbol;
  /** Searched for between two values, or found together with other unknowns of linear equations. */
  readonly by:
    | { readonly kind: 'search'; readonly low: Value; readonly high: Value }
    | { readonly kind: 'linear'; readonly together: readonly string[] };
  readonly result: Value;
  readonly remark?: string;
}

/** A letter symbol: `I`, or `I` with the upright subscript `load`. */
export interface LetterSymbol {
  readonly base: string;
  readonly subscript?: string;
}

/** A formula as a tree for display. */
export type Maths =
  | { readonly kind: 'value'; readonly value: Value }
  /** A number as its author wrote it, unit included: digits are kept. */
  | { readonly kind: 'literal'; readonly number: string; readonly unit?: string }
  | { readonly kind: 'symbol'; readonly symbol: LetterSymbol }
  /** `kiln.drop`: a name, as typed, with dots. */
  | { readonly kind: 'name'; readonly name: string }
  | {
      readonly kind: 'binary';
      readonly operator: '+' | '-' | '*' | '/' | '^' | '==' | '!=' | '<' | '<=' | '>' | '>=' | 'and' | 'or' | 'where';
      readonly left: Maths;
      readonly right: Maths;
    }
  | { readonly kind: 'unary'; readonly operator: '-' | '+' | 'not'; readonly operand: Maths }
  | { readonly kind: 'call'; readonly name: string; readonly arguments: readonly { name?: string; value: Maths }[] }
  | { readonly kind: 'list'; readonly items: readonly Maths[] }
  | { readonly kind: 'if'; readonly condition: Maths; readonly then: Maths; readonly otherwise: Maths }
  | { readonly kind: 'plus-minus'; readonly value: Maths; readonly limits: Maths }
  | { readonly kind: 'text'; readonly text: string };
