import type { Diagnostic, ProblemCode } from '../../text';
import { plainStorage, type StatementCode, type Storage } from '../evaluation/storage';
import type { StatementResult } from '../program';
import { type Solved, withSolutions } from '../solving/solution';
import { Node, type SyntaxTree } from '../syntax/tree';
import { Checker, type CheckingContext } from './checker';
import { definedNodes, firstDefined } from './defined-nodes';
import { Meaning } from './meaning';
import type { NameTable } from './name-table';
import type { Type } from './type';
import { unknownType } from './types';

/** Shared, because most statements have none. */
export const noDiagnostics: readonly Diagnostic[] = [];

const none: readonly Statement[] = [];
const noNodes: readonly number[] = [];

/** One statement of a cell, with what it defines and needs. What checking and running found out hangs on it, too. */
export class Statement {
  /** The name it defines, if any; those of a `solve` are defined by the statements of its unknowns. */
  defines?: Name;
  /** Where the names that it uses lie among those of its cell; a list for each statement would be one more to collect. */
  usesFrom = 0;
  usesEnd = 0;
  checkDiagnostics: readonly Diagnostic[] = noDiagnostics;
  runDiagnostics: readonly Diagnostic[] = noDiagnostics;
  /** Of parts of it beside which the rest has a value: rows of a schedule. */
  partDiagnostics: readonly Diagnostic[] = noDiagnostics;
  /** Type of its expression; that of its names where it defines one. Unknown after an error. */
  type: Type = unknownType;
  /** Where its instructions lie, the first slot of its value and what else it uses; no slot, -1, while it is not compiled. */
  codeStart = 0;
  codeEnd = 0;
  slot = -1;
  storage: Storage = plainStorage;
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
  /** Number of the last update in which it was to be checked anew, whatever became of what it needs. */
  touchedIn = 0;
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

  get isCompiled(): boolean {
    return this.slot >= 0;
  }

  /** Its code and value, once it is compiled. */
  get code(): StatementCode {
    return { start: this.codeStart, end: this.codeEnd, slot: this.slot, size: this.storage.size };
  }

  /** The names that it uses, each once. */
  get uses(): readonly Name[] {
    return this.cell.uses.slice(this.usesFrom, this.usesEnd);
  }

  /** The nodes whose text it defines as a name; several for `solve`. */
  get nameNodes(): number[] {
    return this.part >= 0 ? [this.part] : definedNodes(this.cell.tree, this.node);
  }

  /** The first of them; -1 where there is none. */
  get nameNode(): number {
    return this.part >= 0 ? this.part : firstDefined(this.cell.tree, this.node);
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
  readonly problem?: { readonly code: ProblemCode; readonly message: string };
}

/** One cell, read: its tree, and what checking found out about its nodes. */
export class Cell {
  /** The tree as written, with the formulas that `solve` came to behind it. */
  readonly tree: SyntaxTree;
  readonly solved: ReadonlyMap<number, Solved>;
  readonly meaning: Meaning;
  /** Checks its statements one after the other. */
  private readonly ownChecker: Checker;
  /** Each unknown of a `solve` is a statement of its own, before the one that holds the equations. */
  readonly statements: readonly Statement[];
  /** The names that each statement uses, one statement behind the other. */
  readonly uses: Name[] = [];
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
    this.ownChecker = new Checker(context, this.meaning);
    const statements: Statement[] = [];
    const takers: Statement[] = [];
    for (let index = 0; index < written.statements.length; index++) {
      const node = written.statements[index];
      const kind = tree.kinds[node] as Node;
      const parts = kind === Node.Use ? definedNodes(tree, node) : noNodes;
      for (const part of parts) {
        const taker = new Statement(this, index, node, part);
        takers.push(taker);
        statements.push(taker);
      }
      if (parts.length === 0) {
        const whole = new Statement(this, index, node);
        if (kind === Node.Solve) {
          whole.unknowns = solved.get(node)?.nodes.map((one) => new Statement(this, index, one)) ?? none;
          statements.push(...whole.unknowns);
        }
        statements.push(whole);
      }
    }
    this.statements = statements;
    this.takers = takers;
  }

  /** Enters its statements with the names that they use; those that take names are entered as they take them. */
  enterUses(): void {
    for (const statement of this.statements) {
      if (!statement.taken) {
        for (let i = statement.usesFrom; i < statement.usesEnd; i++) {
          this.uses[i].addUser(statement);
        }
      }
    }
  }

  /** Ready to check a statement of the cell. What the last one found is no longer in it. */
  checker(): Checker {
    this.ownChecker.begin();
    return this.ownChecker;
  }
}

/**
 * One name of the sheet. It stays the same object while its definitions come and go, so that what refers to it need
 * not be bound again.
 */
export class Name {
  /** Nearly every name has one definition, which needs no list. */
  private first: Statement | undefined;
  private others = none;
  private usedBy = none;
  private inOrder: readonly Statement[] | undefined;
  type: Type = unknownType;
  /** First of the slots that hold its value; -1 until its type is known. */
  slot = -1;
  /** Numbers of the last updates in which its type and its value may have changed. */
  retypedIn = 0;
  revaluedIn = 0;
  /** Number of the last update in which all its users were reached. */
  reachedIn = 0;
  /** Number of the last update in which a definition of it came or went. */
  touchedIn = 0;

  constructor(
    readonly text: string,
    private readonly table: NameTable,
  ) {}

  get definitions(): readonly Statement[] {
    return this.first ? [this.first, ...this.others] : none;
  }

  get isDefined(): boolean {
    return this.first !== undefined;
  }

  /** True when several statements define it, so that it has no value. */
  get isContested(): boolean {
    return this.others.length > 0;
  }

  addDefinition(statement: Statement): void {
    if (this.first) {
      this.others = added(this.others, statement);
    } else {
      this.first = statement;
    }
    this.inOrder = undefined;
  }

  /** Its definitions, each once, in the order that `sort` gives them. */
  ordered(sort: (statements: Iterable<Statement>) => readonly Statement[]): readonly Statement[] {
    this.inOrder ??= sort(new Set(this.definitions));
    return this.inOrder;
  }

  /** Statements that use it, each once. */
  get users(): readonly Statement[] {
    this.table.enterUses();
    return this.usedBy;
  }

  /** Enters a statement that uses it. */
  addUser(statement: Statement): void {
    this.usedBy = added(this.usedBy, statement);
  }

  removeUser(statement: Statement): void {
    this.usedBy = this.usedBy.filter((one) => one !== statement);
  }

  /** Forgets the statements of a cell that is no more. */
  forget(cell: Cell): void {
    const isThere = (statement: Statement) => statement.cell !== cell;
    const [first, ...others] = this.definitions.filter(isThere);
    this.first = first;
    this.others = others;
    this.usedBy = this.usedBy.filter(isThere);
    this.inOrder = undefined;
  }

  /** The one statement that defines it; undefined when there is none or more than one. */
  get definition(): Statement | undefined {
    return this.others.length === 0 ? this.first : undefined;
  }

  /** The statement that its value or function comes from, in whichever sheet that stands. */
  get origin(): Statement | undefined {
    const { definition } = this;
    return definition?.taken?.name ? definition.taken.name.origin : definition;
  }
}

/**
 * A list that nobody but its owner holds with one more in it. Short ones, which are nearly all, are made anew to measure:
 * one that grows makes room for many more than ever come.
 */
function added(list: readonly Statement[], statement: Statement): readonly Statement[] {
  switch (list.length) {
    case 0:
      return [statement];
    case 1:
      return [list[0], statement];
    case 2:
      return [list[0], list[1], statement];
    default:
      (list as Statement[]).push(statement);
      return list;
  }
}
