import type { Diagnostic } from '../../text';
import type { CompiledStatement } from '../evaluation/runner';
import type { FunctionDefinition } from '../library';
import type { StatementResult } from '../program';
import { type Solved, withSolutions } from '../solving/solution';
import { namesInSolution } from '../solving/solution-parts';
import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';
import { argumentNodes } from './arguments';
import type { CheckingContext } from './checker';
import { definedNodes } from './defined-nodes';
import { Meaning } from './meaning';
import { expressionsIn } from './schedules/expressions-in';
import type { Type } from './type';
import { unknownType } from './types';

/** Shared, because most statements have none. */
export const noDiagnostics: readonly Diagnostic[] = [];

const none: readonly Statement[] = [];

/** One statement of a cell, with what it defines and needs. What checking and running found out hangs on it, too. */
export class Statement {
  /** Names it defines; several for `solve`. */
  readonly defines: Name[] = [];
  /** Each once. */
  readonly uses: Name[] = [];
  checkDiagnostics: readonly Diagnostic[] = noDiagnostics;
  runDiagnostics: readonly Diagnostic[] = noDiagnostics;
  /** Of parts of it beside which the rest has a value: rows of a schedule. */
  partDiagnostics: readonly Diagnostic[] = noDiagnostics;
  /** Type of its expression; that of its names where it defines one. Unknown after an error. */
  type: Type = unknownType;
  compiled?: CompiledStatement;
  /** True when it came to a value, or defines a function that can be called. */
  succeeded = false;
  /** True when it takes a reading or needs a name that hangs on one. */
  isUncertain = false;
  /** True when it needs its own result. */
  isCyclic = false;
  /** While statements are ordered: how many of those that it needs are not in order yet; else -1. */
  waitsFor = -1;
  /** Number of the last update in which it was found to hang on what was edited. */
  reachedIn = 0;
  result?: StatementResult;
  /** For the equations of a `solve`: the statements that each find one of its unknowns. */
  unknowns: readonly Statement[] = none;
  /** For a name taken from another sheet: where it stands there, or why it cannot be taken. */
  taken?: Taken;

  constructor(
    readonly cell: Cell,
    readonly index: number,
    readonly node: number,
    /** The node of the one name that it takes; a `use` is a statement for each of its names. Else -1. */
    readonly part = -1,
  ) {}

  /** The nodes whose text it defines as a name. */
  get nameNodes(): number[] {
    return this.part >= 0 ? [this.part] : definedNodes(this.cell.tree, this.node);
  }

  /** True when it finds one unknown of a `solve`. */
  get isUnknown(): boolean {
    return this.node !== this.cell.tree.statements[this.index];
  }

  /** True when its name is that of a function, defined here or taken from another sheet. */
  get givesFunction(): boolean {
    const { definition } = this.taken?.name ?? {};
    return definition ? definition.givesFunction : this.cell.tree.kinds[this.node] === Node.FunctionDefinition;
  }

  /** The expression that gives its value; -1 when it has none. */
  get expression(): number {
    const { kinds, firstChildren, nextSiblings } = this.cell.tree;
    switch (kinds[this.node]) {
      case Node.Definition:
      case Node.Input:
        return nextSiblings[firstChildren[this.node]];
      case Node.Show:
      case Node.Check:
        return firstChildren[this.node];
      case Node.BlockCall:
      case Node.Schedule:
        return this.node;
      case Node.Use:
        return this.part;
      default:
        return -1;
    }
  }
}

/** A name of another sheet. `problem` is told at the file's name, once for all names taken from it. */
export interface Taken {
  /** The file as the sheet names it. */
  readonly file: string;
  /** All names of the other sheet, and the one meant, defined there or not. */
  readonly names?: NameTable;
  readonly name?: Name;
  readonly problem?: { readonly code: string; readonly message: string };
}

/** One cell, read: its tree, and what checking found out about its nodes. */
export class Cell {
  /** The tree as written, with the formulas that `solve` came to behind it. */
  readonly tree: SyntaxTree;
  readonly solved: ReadonlyMap<number, Solved>;
  readonly meaning: Meaning;
  /** Each unknown of a `solve` is a statement of its own, before the one that holds the equations. */
  readonly statements: readonly Statement[];
  /** Those that take a name from another sheet. */
  readonly takers: readonly Statement[];

  constructor(
    readonly id: string,
    readonly written: SyntaxTree,
    readonly context: CheckingContext,
    /** True for one that is not the sheet's own: what stands in it counts as no use of a name. */
    readonly isAside = false,
  ) {
    const { tree, origins, solved } = withSolutions(written);
    this.tree = tree;
    this.solved = solved;
    this.meaning = new Meaning(tree, id, context.library, origins);
    this.statements = written.statements.flatMap((node, index) => {
      const parts = tree.kinds[node] === Node.Use ? definedNodes(tree, node) : [];
      if (parts.length > 0) {
        return parts.map((part) => new Statement(this, index, node, part));
      }
      const whole = new Statement(this, index, node);
      whole.unknowns = solved.get(node)?.nodes.map((one) => new Statement(this, index, one)) ?? none;
      return [...whole.unknowns, whole];
    });
    this.takers = this.statements.filter((statement) => statement.part >= 0);
  }
}

/**
 * One name of the sheet. It stays the same object while its definitions come and go, so that what refers to it need
 * not be bound again.
 */
export class Name {
  readonly definitions: Statement[] = [];
  private inOrder: readonly Statement[] | undefined;
  type: Type = unknownType;
  private knownUsers: Set<Statement> | undefined;
  /** First of the slots that hold its value; -1 until its type is known. */
  slot = -1;
  /** Numbers of the last updates in which its type and its value may have changed. */
  retypedIn = 0;
  revaluedIn = 0;
  /** Number of the last update in which all its users were reached. */
  reachedIn = 0;

  constructor(readonly text: string) {}

  addDefinition(statement: Statement): void {
    this.definitions.push(statement);
    this.inOrder = undefined;
  }

  removeDefinition(statement: Statement): void {
    this.definitions.splice(this.definitions.indexOf(statement), 1);
    this.inOrder = undefined;
  }

  /** Its definitions, each once, in the order that `sort` gives them. */
  ordered(sort: (statements: Iterable<Statement>) => readonly Statement[]): readonly Statement[] {
    this.inOrder ??= sort(new Set(this.definitions));
    return this.inOrder;
  }

  /** Statements that use it. Most names of a long sheet have none, so the set is made for the first one. */
  get users(): ReadonlySet<Statement> {
    return this.knownUsers ?? nobody;
  }

  addUser(statement: Statement): void {
    this.knownUsers ??= new Set();
    this.knownUsers.add(statement);
  }

  removeUser(statement: Statement): void {
    this.knownUsers?.delete(statement);
  }

  /** The one statement that defines it; undefined when there is none or more than one. */
  get definition(): Statement | undefined {
    return this.definitions.length === 1 ? this.definitions[0] : undefined;
  }

  /** The statement that its value or function comes from, in whichever sheet that stands. */
  get origin(): Statement | undefined {
    const { definition } = this;
    return definition?.taken?.name ? definition.taken.name.origin : definition;
  }
}

const nobody: ReadonlySet<Statement> = new Set();

/** All names of a sheet. */
export class NameTable {
  private readonly names = new Map<string, Name>();

  constructor(private readonly functions: ReadonlyMap<string, FunctionDefinition>) {}

  get(text: string): Name {
    let name = this.names.get(text);
    if (!name) {
      name = new Name(text);
      this.names.set(text, name);
    }
    return name;
  }

  find(text: string): Name | undefined {
    return this.names.get(text);
  }

  /** Names that have a definition. */
  *defined(): Generator<Name> {
    for (const name of this.names.values()) {
      if (name.definitions.length > 0) {
        yield name;
      }
    }
  }

  /** Enters what a cell's statements define and need. */
  bind(cell: Cell): void {
    for (const statement of cell.statements) {
      for (const node of statement.nameNodes) {
        const name = this.get(textOf(cell.tree, node));
        cell.meaning.names[node] = name;
        if (cell.tree.kinds[statement.node] !== Node.Solve) {
          name.addDefinition(statement);
          statement.defines.push(name);
        }
      }
      this.collect(cell, statement, statement.node, parametersOf(cell.tree, statement.node));
    }
  }

  /** Enters what a statement takes from another sheet, in place of what it took before. */
  static take(statement: Statement, taken: Taken): void {
    const { cell, part, uses } = statement;
    for (const name of uses.splice(0)) {
      name.removeUser(statement);
    }
    const name = taken.names?.get(textOf(cell.tree, part));
    statement.taken = { ...taken, name };
    if (name) {
      uses.push(name);
      name.addUser(statement);
      cell.meaning.names[part] = name; // There it has its value; here it is no more than the name.
    }
  }

  /** Takes a cell's statements out again. */
  unbind(cell: Cell): void {
    for (const statement of cell.statements) {
      for (const name of statement.defines) {
        name.removeDefinition(statement);
        this.forget(name);
      }
      for (const name of statement.uses) {
        name.removeUser(statement);
        this.forget(name);
      }
    }
  }

  private forget(name: Name): void {
    // A name of another sheet is that sheet's to forget.
    if (name.definitions.length === 0 && name.users.size === 0 && this.names.get(name.text) === name) {
      this.names.delete(name.text);
    }
  }

  private collect(cell: Cell, statement: Statement, node: number, locals: ReadonlySet<string>): void {
    const { tree } = cell;
    const { kinds, firstChildren, nextSiblings } = tree;
    switch (kinds[node]) {
      case Node.Number:
      case Node.Quantity:
        return;
      case Node.Name: {
        const text = textOf(tree, node);
        if (!locals.has(text)) {
          const name = this.get(text);
          cell.meaning.names[node] = name;
          if (!statement.uses.includes(name)) {
            statement.uses.push(name);
            name.addUser(statement);
          }
        }
        return;
      }
      case Node.Member:
        this.collect(cell, statement, firstChildren[node], locals);
        return;
      case Node.Call:
      case Node.BlockCall:
        this.collectCall(cell, statement, node, locals);
        return;
      case Node.Definition:
      case Node.Input:
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], locals);
        return;
      case Node.FunctionDefinition:
        this.collectAll(cell, statement, nextSiblings[nextSiblings[firstChildren[node]]], locals);
        return;
      case Node.Designation:
      case Node.Allow:
      case Node.Use:
        return;
      case Node.Schedule:
        for (const { expression, columns } of expressionsIn(cell.meaning, node)) {
          this.collect(cell, statement, expression, columns);
        }
        return;
      case Node.Unknown:
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], locals);
        return;
      case Node.Solution:
      case Node.Together: {
        const { needs, own } = namesInSolution(tree, node);
        for (const name of needs) {
          this.collect(cell, statement, name, locals);
        }
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], own);
        return;
      }
      default:
        this.collectAll(cell, statement, firstChildren[node], locals);
    }
  }

  private collectAll(cell: Cell, statement: Statement, first: number, locals: ReadonlySet<string>): void {
    for (let node = first; node >= 0; node = cell.tree.nextSiblings[node]) {
      this.collect(cell, statement, node, locals);
    }
  }

  private collectCall(cell: Cell, statement: Statement, node: number, locals: ReadonlySet<string>): void {
    const { tree } = cell;
    const { callee, items } = argumentNodes(tree, node);
    const definition = this.functions.get(textOf(tree, callee));
    if (!definition) {
      this.collect(cell, statement, callee, locals);
    }
    const positional = definition
      ? Object.keys(definition.parameters).filter((p) => !definition.parameters[p].named)
      : [];
    let position = 0;
    for (const { name, expression } of items) {
      const parameter = name >= 0 ? textOf(tree, name) : positional[position++];
      const spec =
        definition && parameter !== undefined && Object.hasOwn(definition.parameters, parameter)
          ? definition.parameters[parameter]
          : undefined;
      // The words of a choice are not names.
      if (!(spec && 'choice' in spec && spec.choice.includes(textOf(tree, expression)))) {
        this.collect(cell, statement, expression, locals);
      }
    }
  }
}

const noLocals: ReadonlySet<string> = new Set();

/** The parameter names of a function definition. */
function parametersOf(tree: SyntaxTree, node: number): ReadonlySet<string> {
  if (tree.kinds[node] !== Node.FunctionDefinition) {
    return noLocals;
  }
  const parameters = tree.nextSiblings[tree.firstChildren[node]];
  return new Set([...children(tree, parameters)].map((child) => textOf(tree, child)));
}
