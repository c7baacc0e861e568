import type { QuantityType, Unit } from '../../units';

/**
 * What is known of an expression before anything runs. `unit` is the unit a quantity is shown in; it is part of the
 * inference (it follows the way the expression is written), never of type equality.
 */
export type Type =
  | {
      readonly kind: 'quantity';
      readonly quantity: QuantityType;
      readonly unit: Unit;
      /** True when nobody wrote the unit: it follows from the arithmetic. */
      readonly unitIsDerived?: true;
    }
  | { readonly kind: 'boolean' }
  | { readonly kind: 'text' }
  /** One of a few words, such as a metal or a raceway type. */
  | { readonly kind: 'choice'; readonly words: readonly string[] }
  /** A value of the library that the language only passes on, such as a conductor. */
  | { readonly kind: 'object'; readonly object: ObjectType }
  | { readonly kind: 'record'; readonly name: string; readonly fields: ReadonlyMap<string, Type> }
  | { readonly kind: 'list'; readonly element: Type }
  /** Columns of one length; the type is that of each cell. */
  | {
      readonly kind: 'schedule';
      readonly columns: ReadonlyMap<string, Type>;
      /** How many of the columns, the first ones, are written and not worked out. */
      readonly written: number;
    }
  /** `measures` is absent for a meter whose accuracy fits readings of any kind. */
  | { readonly kind: 'meter'; readonly measures?: Extract<Type, { kind: 'quantity' }> }
  /** A reading over range: more than a quantity like `end`, the end of the range. */
  | { readonly kind: 'bound'; readonly end: Extract<Type, { kind: 'quantity' }> }
  /** After an error that was reported already; nothing more is said about it. */
  | { readonly kind: 'unknown' };

/** Names a kind of library value and says how one reads. `T` is the value's TypeScript type. */
export interface ObjectType<T = unknown> {
  readonly name: string;
  /** With its article, for messages: `a conductor`. */
  readonly described: string;
  text(value: T): string;
  /** Why `<` and `>` mean nothing between two of them, and what to compare instead. */
  readonly unordered?: string;
  /** Carries `T`; never there at run time. */
  carries?(value: T): T;
}
