import type { Diagnostic } from '../../text';
import type { Name, Statement } from '../checking/binding';
import type { CheckingContext } from '../checking/checker';
import { checkStatement } from '../checking/statements';
import type { Type } from '../checking/type';
import { unknownType } from '../checking/types';
import { failureOf } from '../evaluation/failures';
import { inputProblem } from '../evaluation/input-range';
import { replay } from '../evaluation/replay';
import type { Runner } from '../evaluation/runner';
import { Node } from '../syntax/tree';
import { circular, duplicates, inOrder } from './definition-problems';
import { orderByDependency } from './dependency-order';
import { Result } from './statement-result';

/** Checks and runs statements after an edit: those touched, and of their dependants those for which something changed. */
export class Settler {
  /** Statements whose reports hang on which other names there are. */
  readonly unresolved = new Set<Statement>();
  readonly results = new Map<Statement, Result>();

  constructor(
    private readonly context: CheckingContext,
    private readonly runner: Runner,
  ) {}

  /** Settles the statements touched and all that hangs on them; returns those whose results or reports are new. */
  settle(touched: ReadonlySet<Statement>): Statement[] {
    const { ordered, circles } = orderByDependency(withDependants(touched));
    const circleOf = new Map<Statement, readonly Statement[]>();
    for (const circle of circles.map(inOrder)) {
      for (const member of circle) {
        circleOf.set(member, circle);
      }
    }
    forgetTypes(circleOf.keys());
    const retyped = new Set<Name>();
    const revalued = new Set<Name>();
    const changed: Statement[] = [];
    for (const statement of ordered) {
      const isOrWasCyclic = statement.isCyclic;
      const mustCheck = touched.has(statement) || uses(statement, retyped) || isOrWasCyclic;
      if (!mustCheck && !uses(statement, revalued)) {
        continue;
      }
      const oldType = statement.type;
      if (mustCheck) {
        this.check(statement, circleOf.get(statement));
      }
      this.run(statement);
      changed.push(statement);
      const isFunction = statement.cell.tree.kinds[statement.node] === Node.FunctionDefinition;
      for (const name of statement.defines) {
        revalued.add(name);
        if (isFunction || statement.type !== oldType || touched.has(statement) || isOrWasCyclic) {
          retyped.add(name);
        }
      }
    }
    return changed;
  }

  /** Forgets a statement that is no more. */
  drop(statement: Statement): void {
    this.unresolved.delete(statement);
    this.results.delete(statement);
    this.runner.release(statement);
  }

  private check(statement: Statement, circle: readonly Statement[] | undefined): void {
    statement.isCyclic = circle !== undefined;
    statement.runDiagnostics = [];
    const namesMissing = checkStatement(this.context, statement);
    const problems: Diagnostic[] = duplicates(statement);
    if (circle) {
      problems.push(circular(statement, circle));
    }
    if (problems.length > 0) {
      statement.checkDiagnostics = [...problems, ...statement.checkDiagnostics];
      statement.type = unknownType;
    }
    for (const name of statement.defines) {
      name.type = name.definitions.length === 1 ? statement.type : unknownType;
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
    statement.runDiagnostics = [];
    statement.succeeded = false;
    const missing = [...statement.uses].filter((name) => name.definitions.length > 0 && !name.definition?.succeeded);
    if (missing.length === 0 && statement.checkDiagnostics.length === 0) {
      statement.succeeded = statement.compiled
        ? this.runCompiled(statement)
        : statement.cell.tree.kinds[statement.node] === Node.FunctionDefinition;
    }
    this.results.set(
      statement,
      new Result(statement, this.runner, missing.length > 0 ? missing.map((name) => name.text) : undefined),
    );
  }

  private runCompiled(statement: Statement): boolean {
    if (!this.runner.run(statement)) {
      statement.runDiagnostics = [replay(this.runner, statement, (run) => failureOf(run, statement.expression))];
      return false;
    }
    const problem = inputProblem(this.runner, statement);
    if (problem) {
      statement.runDiagnostics = [problem];
    }
    return !problem;
  }
}

/** Members of a circle are checked as if nothing were known of each other, so that it does not matter which comes first. */
function forgetTypes(members: Iterable<Statement>): void {
  for (const member of members) {
    member.isCyclic = true;
    member.succeeded = false;
    for (const name of member.defines) {
      name.type = unknownType;
    }
  }
}

const isKnown = (type: Type): boolean => type.kind !== 'unknown';

function uses(statement: Statement, names: ReadonlySet<Name>): boolean {
  if (names.size === 0) {
    return false;
  }
  for (const name of statement.uses) {
    if (names.has(name)) {
      return true;
    }
  }
  return false;
}

/** The statements and everything that needs them, directly or by way of others. */
function withDependants(touched: ReadonlySet<Statement>): Set<Statement> {
  const all = new Set(touched);
  // A set visits what is added while it is walked.
  for (const statement of all) {
    for (const name of statement.defines) {
      for (const user of name.users) {
        all.add(user);
      }
    }
  }
  return all;
}
