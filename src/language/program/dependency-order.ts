import type { Statement } from '../checking/binding';

/** Statements in an order in which each comes after what it needs, and those that need themselves in a circle. */
export interface DependencyOrder {
  readonly ordered: readonly Statement[];
  readonly circles: readonly (readonly Statement[])[];
}

/** Orders a set of statements by what they use of each other. Takes no recursion: a chain may be as long as the sheet. */
export function orderByDependency(statements: ReadonlySet<Statement>): DependencyOrder {
  const waiting = new Map<Statement, number>();
  const ordered: Statement[] = [];
  for (const statement of statements) {
    let count = 0;
    for (const name of statement.uses) {
      for (const definition of name.definitions) {
        count += statements.has(definition) ? 1 : 0;
      }
    }
    if (count === 0) {
      ordered.push(statement);
    } else {
      waiting.set(statement, count);
    }
  }
  settle(ordered, waiting, 0);
  const circles: (readonly Statement[])[] = [];
  while (waiting.size > 0) {
    // What is left hangs on a circle. Settling its members lets what comes after them be ordered.
    const found = circlesAmong(waiting);
    circles.push(...found);
    const from = ordered.length;
    for (const circle of found) {
      for (const member of circle) {
        waiting.delete(member);
        ordered.push(member);
      }
    }
    settle(ordered, waiting, from);
  }
  return { ordered, circles };
}

/** Moves over every statement whose last need is met, beginning with what those from `from` on meet. */
function settle(ordered: Statement[], waiting: Map<Statement, number>, from: number): void {
  for (let i = from; i < ordered.length; i++) {
    for (const name of ordered[i].defines) {
      for (const user of name.users) {
        const count = waiting.get(user);
        if (count === 1) {
          waiting.delete(user);
          ordered.push(user);
        } else if (count !== undefined) {
          waiting.set(user, count - 1);
        }
      }
    }
  }
}

/** Circles found by walking from what a statement needs to what that needs, until one comes up again. */
function circlesAmong(waiting: ReadonlyMap<Statement, number>): Statement[][] {
  const index = new Map<Statement, number>();
  const lowest = new Map<Statement, number>();
  const open: Statement[] = [];
  const isOpen = new Set<Statement>();
  const circles: Statement[][] = [];
  const needsOf = (statement: Statement) =>
    [...statement.uses].flatMap((name) => name.definitions.filter((definition) => waiting.has(definition)));
  for (const root of waiting.keys()) {
    if (index.has(root)) {
      continue;
    }
    // Strongly connected components after Tarjan, with a stack of our own.
    const path = [{ statement: root, needs: needsOf(root), next: 0 }];
    while (path.length > 0) {
      const step = path.at(-1)!;
      const { statement } = step;
      if (step.next === 0 && !index.has(statement)) {
        lowest.set(statement, index.size);
        index.set(statement, index.size);
        open.push(statement);
        isOpen.add(statement);
      }
      const need = step.needs[step.next++];
      if (need !== undefined) {
        if (!index.has(need)) {
          path.push({ statement: need, needs: needsOf(need), next: 0 });
        } else if (isOpen.has(need)) {
          lowest.set(statement, Math.min(lowest.get(statement)!, index.get(need)!));
        }
        continue;
      }
      path.pop();
      const above = path.at(-1)?.statement;
      if (above) {
        lowest.set(above, Math.min(lowest.get(above)!, lowest.get(statement)!));
      }
      if (lowest.get(statement) === index.get(statement)) {
        const component = open.splice(open.indexOf(statement));
        for (const member of component) {
          isOpen.delete(member);
        }
        if (component.length > 1 || needsOf(statement).includes(statement)) {
          circles.push(component);
        }
      }
    }
  }
  return circles;
}
