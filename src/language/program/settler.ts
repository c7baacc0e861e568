import { type Cell, type Name, noDiagnostics, type Statement } from '../checking/binding';
import { checkStatement } from '../checking/statements';
import type { Type } from '../checking/type';
import { unknownType } from '../checking/types';
import { failureOf } from '../evaluation/failures';
import { inputProblem } from '../evaluation/input-range';
import { replay } from '../evaluation/replay';
import type { Runner } from '../evaluation/runner';
import { rowFailures } from '../evaluation/schedules/row-failures';
import { scheduleOf } from '../evaluation/schedules/row-replay';
import { turningCalls } from '../evaluation/turning-calls';
import { Node } from '../syntax/tree';
import { circular, duplicate, inOrder } from './definition-problems';
import { orderByDependency } from './dependency-order';
import { Result } from './statement-result';
import { takenProblem } from './taken-problem';

/** Checks and runs statements after an edit: those touched, and of their dependants those for which something changed. */
export class Settler {
  /** Statements whose reports hang on which other names there are. */
  private readonly unresolved = new Set<Statement>();
  /** How often statements were run, all that hang together at once: while it stands, so do all results. */
  rounds = 0;
  private update = 0;
  /** The statements to be checked anew, as far as they are known; each bears the number of the update. */
  private touched: Statement[] = [];
  /** How many statements there are. */
  private count = 0;

  constructor(private readonly runner: Runner) {}

  /** Begins an update. */
  begin(): void {
    this.update++;
    this.rounds++;
    this.touched = [];
  }

  /** Has a statement that is new checked. */
  enter(statement: Statement): void {
    this.count++;
    this.touch(statement);
  }

  /** Has a statement checked anew. */
  touch(statement: Statement): void {
    if (statement.touchedIn !== this.update) {
      statement.touchedIn = this.update;
      this.touched.push(statement);
    }
  }

  /** Has all checked anew that hangs on how often a name is defined. */
  touchName(name: Name): void {
    if (name.touchedIn === this.update) {
      return;
    }
    name.touchedIn = this.update;
    name.users.forEach(this.touch, this);
    if (name.definition) {
      this.touch(name.definition);
    } else {
      name.definitions.forEach(this.touch, this);
    }
  }

  /** Has all checked anew whose reports hang on which names there are. */
  touchUnresolved(): void {
    for (const statement of this.unresolved) {
      this.touch(statement);
    }
  }

  /** True when every statement is checked anew, so that nothing else hangs on them. */
  get isAll(): boolean {
    return this.touched.length === this.count;
  }

  /** Settles the statements touched and all that hangs on them; returns the cells in which results or reports are new. */
  settle(): ReadonlySet<Cell> {
    const { update, touched } = this;
    const { ordered, circles } = orderByDependency(this.isAll ? touched : withDependants(touched, update));
    const circleOf = new Map<Statement, readonly Statement[]>();
    for (const circle of circles.map(inOrder)) {
      for (const member of circle) {
        circleOf.set(member, circle);
      }
    }
    forgetTypes(circleOf.keys());
    forgetContested(touched);
    const changed = new Set<Cell>();
    let cell: Cell | undefined; // Of the statement before, which mostly is that of the next one.
    for (const statement of ordered) {
      const isOrWasCyclic = statement.isCyclic;
      const isTouched = statement.touchedIn === update;
      const news = isTouched || isOrWasCyclic ? News.Type : newsFor(statement, update);
      if (news === News.None) {
        continue;
      }
      const oldType = statement.type;
      if (news === News.Type) {
        this.check(statement, circleOf.get(statement));
      }
      this.run(statement);
      if (statement.cell !== cell) {
        cell = statement.cell;
        changed.add(cell);
      }
      const name = statement.defines;
      if (name) {
        name.revaluedIn = update;
        if (isTouched || isOrWasCyclic || statement.type !== oldType || statement.givesFunction) {
          name.retypedIn = update;
        }
      }
    }
    return changed;
  }

  /** Runs statements again, in this order, because what they need has other values. */
  again(statements: readonly Statement[]): void {
    this.rounds++;
    for (const statement of statements) {
      this.run(statement);
    }
  }

  /** Forgets a statement that is no more. */
  drop(statement: Statement): void {
    this.count--;
    this.unresolved.delete(statement);
    this.runner.release(statement);
  }

  /** What hangs on these statements, each after what it needs; they themselves are not among it. */
  dependantsOf(statements: readonly Statement[]): readonly Statement[] {
    this.update++;
    const { ordered } = orderByDependency(withDependants(statements, this.update));
    return ordered.filter((statement) => !statements.includes(statement));
  }

  private check(statement: Statement, circle: readonly Statement[] | undefined): void {
    statement.isCyclic = circle !== undefined;
    statement.runDiagnostics = noDiagnostics;
    const namesMissing = checkStatement(statement);
    const name = statement.defines;
    if (name?.isContested || circle) {
      statement.checkDiagnostics = [
        ...(name?.isContested ? [duplicate(statement, name)] : []),
        ...(circle ? [circular(statement, circle)] : []),
        ...statement.checkDiagnostics,
      ];
      statement.type = unknownType;
    }
    if (name) {
      name.type = statement.type;
    }
    if (namesMissing) {
      this.unresolved.add(statement);
    } else {
      this.unresolved.delete(statement);
    }
    if (isKnown(statement.type) && statement.expression >= 0) {
      this.runner.compile(statement);
    } else {
      this.runner.release(statement);
    }
  }

  private run(statement: Statement): void {
    const { cell, usesEnd } = statement;
    let isUncertain = statement.storage.takesReadings;
    /** Names that it needs and that have no value. */
    let missing: string[] | undefined;
    for (let i = statement.usesFrom; i < usesEnd; i++) {
      const name = cell.uses[i];
      const { definition } = name;
      isUncertain ||= definition?.isUncertain === true;
      if (definition ? !definition.succeeded : name.isContested) {
        missing ??= [];
        missing.push(name.text);
      }
    }
    statement.isUncertain = isUncertain;
    statement.runDiagnostics = noDiagnostics;
    statement.succeeded = false;
    if (!missing && statement.checkDiagnostics.length === 0) {
      statement.succeeded = statement.isCompiled ? this.runCompiled(statement) : statement.givesFunction;
    } else if (missing && statement.taken) {
      statement.runDiagnostics = [takenProblem(statement)];
    }
    // The unknowns of a `solve` have results of their own; its equations have none beside.
    statement.result = isSolve(statement)
      ? undefined
      : new Result(statement, this.runner, statement.taken ? undefined : missing);
  }

  private runCompiled(statement: Statement): boolean {
    if (!this.runner.run(statement)) {
      statement.runDiagnostics = isBroken(statement)
        ? noDiagnostics
        : [replay(this.runner, statement, (run) => failureOf(run, statement.expression))];
      return false;
    }
    const kind = statement.cell.tree.kinds[statement.node];
    if (kind !== Node.Schedule && kind !== Node.Input && !statement.isUncertain) {
      return true;
    }
    if (scheduleOf(statement)) {
      const turning = statement.isUncertain ? turningCalls(this.runner, statement) : noDiagnostics;
      statement.runDiagnostics = [...turning, ...rowFailures(this.runner, statement)];
      return true;
    }
    const turning = statement.isUncertain ? turningCalls(this.runner, statement) : noDiagnostics;
    const problem = isBroken(statement) ? undefined : inputProblem(this.runner, statement);
    statement.runDiagnostics = problem ? [problem] : turning;
    return !problem;
  }
}

/** Members of a circle are checked as if nothing were known of each other, so that it does not matter which comes first. */
function forgetTypes(members: Iterable<Statement>): void {
  for (const member of members) {
    member.isCyclic = true;
    member.succeeded = false;
    if (member.defines) {
      member.defines.type = unknownType;
    }
  }
}

/** True where a part could not be read. That has been said; what it comes to without that part is nobody's question. */
const isBroken = ({ cell: { tree }, node }: Statement): boolean =>
  tree.diagnostics.some(({ span }) => span.start >= tree.starts[node] && span.end <= tree.ends[node]);

const isSolve = ({ cell, node }: Statement): boolean => cell.tree.kinds[node] === Node.Solve;

/** A name with several definitions has no type, whichever of them is looked at first. */
function forgetContested(touched: Iterable<Statement>): void {
  for (const { defines } of touched) {
    if (defines && !defines.definition) {
      defines.type = unknownType;
    }
  }
}

const isKnown = (type: Type): boolean => type.kind !== 'unknown';

/** What is new of the names that a statement uses: nothing, the value of one, or even the type of one. */
enum News {
  None,
  Value,
  Type,
}

function newsFor({ cell, usesFrom, usesEnd }: Statement, update: number): News {
  let news = News.None;
  for (let i = usesFrom; i < usesEnd; i++) {
    const { retypedIn, revaluedIn } = cell.uses[i];
    if (retypedIn === update) {
      return News.Type;
    }
    if (revaluedIn === update) {
      news = News.Value;
    }
  }
  return news;
}

/** The statements and everything that needs them, directly or by way of others. */
function withDependants(touched: Iterable<Statement>, update: number): Statement[] {
  const all: Statement[] = [];
  for (const statement of touched) {
    if (statement.reachedIn !== update) {
      statement.reachedIn = update;
      all.push(statement);
    }
  }
  for (let i = 0; i < all.length; i++) {
    const name = all[i].defines;
    if (name && name.reachedIn !== update) {
      name.reachedIn = update;
      for (const user of name.users) {
        if (user.reachedIn !== update) {
          user.reachedIn = update;
          all.push(user);
        }
      }
    }
  }
  return all;
}
