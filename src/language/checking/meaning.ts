import { parseUnit, type Unit } from '../../units';
import type { FunctionDefinition, Library, Parameter } from '../library';
import type { GivenRows, SheetProblem } from '../program';
import type { SyntaxTree } from '../syntax/tree';
import type { Name } from './binding';
import type { ScheduleMeaning } from './schedules/schedule-meaning';
import type { Type } from './type';
import { type QuantityOf, writtenIn } from './types';

/** What checking found out about the nodes of one tree. The compiler reads it and decides nothing anew. */
export class Meaning {
  readonly types: Type[];
  /** The names that its nodes mean, each once, behind one that none means. */
  private readonly names: (Name | undefined)[];
  /** For each node which of them: numbers, because a list of names would be gone through with each collection of garbage. */
  private readonly named: Int32Array;
  readonly calls = new Map<number, BoundCall>();
  readonly designations = new Map<number, Designated>();
  /** Solution nodes whose unknown is searched for between its bounds, because no formula gives it. */
  readonly searches = new Set<number>();
  /** What the files of schedules gave when they were checked, by the node of the statement. */
  readonly files = new Map<number, GivenRows | SheetProblem>();
  /** By the node of the statement. */
  readonly schedules = new Map<number, ScheduleMeaning>();
  /** By the number of a unit's text in the tree. */
  private readonly units: (ReturnType<typeof parseUnit> | undefined)[] = [];
  private readonly quantities: (QuantityOf | undefined)[] = [];

  constructor(
    readonly tree: SyntaxTree,
    /** Id of the cell that the tree belongs to. */
    readonly cell: string,
    /** Of the tree's sheet. */
    readonly library: Pick<Library, 'settings' | 'system'>,
    /** For each node the written one that it is or copies; absent where all are written. */
    private readonly origins?: readonly number[],
    /** What is known of the same tree already: its names are the same. */
    known?: Meaning,
  ) {
    this.names = known?.names ?? [undefined];
    this.named = known?.named ?? new Int32Array(tree.count);
    this.types = known ? [] : new Array(tree.count);
  }

  /** What the library was made with; its functions are handed it. */
  get settings(): unknown {
    return this.library.settings;
  }

  /** The name that a node means, if any. */
  nameAt(node: number): Name | undefined {
    return this.names[this.named[node]];
  }

  /** Takes in a name that nodes will mean, and returns its number. */
  addName(name: Name): number {
    return this.names.push(name) - 1;
  }

  /** Has a node mean the name of this number. */
  setName(node: number, name: number): void {
    this.named[node] = name;
  }

  /** The node as its author wrote it; -1 for one that solving made. */
  writtenNode(node: number): number {
    return this.origins ? this.origins[node] : node;
  }

  /** The copies that solving made of a node. */
  copiesOf(node: number): number[] {
    return (this.origins ?? []).flatMap((origin, copy) => (origin === node && copy !== node ? [copy] : []));
  }

  /** The type of the quantity written at a node; undefined when its unit is none. */
  quantityAt(node: number): QuantityOf | undefined {
    const index = this.tree.units[node];
    const known = this.quantities[index];
    if (known) {
      return known;
    }
    const unit = this.unitAt(node);
    if ('problem' in unit) {
      return undefined;
    }
    this.quantities[index] = writtenIn(unit);
    return this.quantities[index];
  }

  /** The unit at a node that has one; an object with `problem` when it is not a unit. */
  unitAt(node: number): ReturnType<typeof parseUnit> {
    const index = this.tree.units[node];
    let unit = this.units[index];
    if (unit === undefined) {
      unit = parseUnit(this.tree.unitTexts[index]);
      this.units[index] = unit;
    }
    return unit;
  }
}

/** A size and its words, read by the library. */
export interface Designated {
  readonly value: unknown;
  readonly assumptions: readonly string[];
}

export type BoundCall = LibraryCall | SheetCall;

/** A call of a library function with each argument in its parameter's place. */
export interface LibraryCall {
  readonly kind: 'library';
  readonly node: number;
  readonly nameNode: number;
  readonly definition: FunctionDefinition;
  readonly arguments: readonly BoundArgument[];
  readonly result: Type;
}

export interface BoundArgument {
  readonly parameter: string;
  readonly spec: Parameter;
  /** -1 when the default is taken; several nodes only for a repeated parameter. */
  readonly nodes: readonly number[];
  readonly type: Type;
  /** The unit in which the function gets its number. */
  readonly unit?: Unit;
  /** The word of a choice that stands there bare. */
  readonly word?: string;
}

/** A call of a function that the sheet defines: its body, checked anew for these argument types. */
export interface SheetCall {
  readonly kind: 'sheet';
  readonly node: number;
  readonly name: Name;
  readonly body: number;
  readonly meaning: Meaning;
  readonly parameters: readonly string[];
  readonly argumentNodes: readonly number[];
}
