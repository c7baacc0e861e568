import type { Diagnostic, Span } from '../../text';

/**
 * What a node is. Children are listed in order; `?` marks one that may be missing (then the node is absent, and
 * `role` tells the rest apart where it matters). Every byte of a cell lies in exactly one token or in trivia.
 */
export enum Node {
  /** A place where something could not be read; its span holds what was skipped. No children. */
  Error,

  // Statements.
  /** Children: Name, expression. `name = expression` */
  Definition,
  /** Children: Name, Parameters, expression. `f(a, b) = expression` */
  FunctionDefinition,
  /** Children: Name, Name (function), Field… `name = f` and indented fields; also `name = solve` never. */
  BlockCall,
  /** Children: Name (field), expression. `field: expression` */
  Field,
  /** Children: expression, Text?. `check expression "label"` */
  Check,
  /** Children: expression. A bare expression, shown but not named. */
  Show,
  /** Children: Unknown…, Equation…. `solve a, b in 1 ft .. 9 ft` and indented equations. */
  Solve,
  /** Children: Name, Range?. One unknown of a solve. */
  Unknown,
  /** Children: low expression, high expression. `low .. high` */
  Range,
  /** Children: left expression, right expression. `left == right` inside a solve. */
  Equation,
  /** Children: Name, HeaderRow and Row… or Text (file), then Column…. `name = schedule` */
  Schedule,
  /** Children: Name…. */
  HeaderRow,
  /** Children: expression or Error or Empty, one per column. */
  Row,
  /** An empty table cell. No children. */
  Empty,
  /** Children: Name, expression. A computed column. */
  Column,
  /** Children: Name, expression, Range?, Text?. `input run = 85 ft from 5 ft to 400 ft "meaning"` */
  Input,
  /** Children: Name…, Text (file). `use a, b from "file"` */
  Use,
  /** Children: Name (lint id, hyphens included), Text?. `allow lint "reason"` */
  Allow,
  /** Children: Name…. */
  Parameters,

  // Expressions.
  /** A plain number. `numbers[node]` is its value. */
  Number,
  /** A number with a unit: `numbers[node]` in `units` as written. No children. */
  Quantity,
  /** A name. */
  Name,
  /** Children: size, Word…. `12 AWG Cu THHN`, `#12 Cu`, `1/0 AWG Al`. */
  Designation,
  /** The size of a designation, unit included. No children. */
  Size,
  /** One word of a designation. No children. */
  Word,
  /** A text in double quotes; the span includes them. */
  Text,
  /** `yes` */
  Yes,
  /** `no` */
  No,
  /** `over range` or `OL`, alone, for a reading beyond the meter. Children: Quantity? (the range's end). */
  OverRange,
  /** Children: left, right. `operators[node]` tells which. */
  Binary,
  /** Children: operand. Minus, plus or `not`. */
  Unary,
  /** Children: expression. Parentheses, kept so that what was written can be shown. */
  Group,
  /** Children: Name (function), Argument…. */
  Call,
  /** Children: Name?, expression. A Name only when written `name: expression`. */
  Argument,
  /** Children: expression, Name. `record.field` */
  Member,
  /** Children: expression…. `[a, b]` */
  List,
  /** Children: expression. `expression in unit`; the unit is in `units`. */
  Convert,
  /** Children: condition, then, else. */
  If,
  /** Children: expression, Name (meter). `13.21 Ω by bench` */
  Reading,
  /** Children: expression, expression. `13.2 Ω ± 0.1 Ω` */
  PlusMinus,
  /** Children: list expression, condition. `panel.load where panel.phase == "A"` */
  Where,
  /**
   * Children: Name (unknown), List (formulas that may give it), Equation (what it must satisfy), Range?. Never written
   * so: solving makes it.
   */
  Solution,
  /**
   * Children: Name (first unknown of the solve), Unknown (the one wanted), Unknown (the others)…, Equation (linear)….
   * Never written so: solving makes it.
   */
  Together,
}

/** Operators of Binary and Unary nodes. */
export enum Operator {
  None,
  Add,
  Subtract,
  Multiply,
  Divide,
  Power,
  Equal,
  NotEqual,
  Less,
  LessOrEqual,
  Greater,
  GreaterOrEqual,
  And,
  Or,
  Not,
  Negate,
  Plus,
}

/**
 * One cell, read. Nodes are numbers; their data lie in parallel arrays, because 10,000 formulas as objects cost
 * several times their weight in garbage collection. A parse never fails: what cannot be read is an Error node and
 * a diagnostic, and reading goes on at the next line.
 */
export interface SyntaxTree {
  readonly text: string;
  /** Nodes in use: 0 … count - 1. */
  readonly count: number;
  readonly kinds: Uint8Array;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  /** First child, -1 for none. */
  readonly firstChildren: Int32Array;
  /** Next sibling, -1 for none. */
  readonly nextSiblings: Int32Array;
  readonly operators: Uint8Array;
  readonly numbers: Float64Array;
  /** Digits after the decimal point as the number was written, in its exponent's scale; for a reading's resolution. */
  readonly decimals: Int8Array;
  /** Index into `unitTexts`, -1 for none. A unit ends where its node ends. */
  readonly units: Int32Array;
  /** Unit texts as written, each once. */
  readonly unitTexts: readonly string[];
  /** Of a Name: index into `nameTexts`; -1 for any other node, and for a Name that nobody wrote. */
  readonly names: Int32Array;
  /** Names as written, each once. */
  readonly nameTexts: readonly string[];
  /** Statement nodes in order. */
  readonly statements: readonly number[];
  /** Comments, each with where it stands; `statement` is the index of the statement whose line it ends or precedes. */
  readonly comments: readonly Comment[];
  readonly diagnostics: readonly Diagnostic[];
}

export interface Comment {
  readonly span: Span;
  /** The text after `//`, trimmed. */
  readonly text: string;
  /** Index in `statements`; -1 when the comment stands alone after the last one. */
  readonly statement: number;
}

/** The children of a node, in order. */
export function* children(tree: SyntaxTree, node: number): Generator<number> {
  for (let child = tree.firstChildren[node]; child >= 0; child = tree.nextSiblings[child]) {
    yield child;
  }
}

export const spanOf = (tree: SyntaxTree, node: number): Span => ({ start: tree.starts[node], end: tree.ends[node] });

/** Where the unit of a node stands that has one. */
export const unitSpanOf = ({ ends, units, unitTexts }: SyntaxTree, node: number): Span => ({
  start: ends[node] - unitTexts[units[node]].length,
  end: ends[node],
});

/** The text of a Name, without cutting it out of the cell's anew. */
export const nameOf = (tree: SyntaxTree, node: number): string =>
  tree.names[node] >= 0 ? tree.nameTexts[tree.names[node]] : textOf(tree, node);

export const textOf = (tree: SyntaxTree, node: number): string => tree.text.slice(tree.starts[node], tree.ends[node]);
