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
  settle(ordered, waiting);
  const circles: (readonly Statement[])[] = [];
  for (const component of componentsOf(waiting)) {
    ordered.push(...component);
    const [first] = component;
    if (component.length > 1 || needsAmong(waiting, first).includes(first)) {
      circles.push(component);
    }
  }
  return { ordered, circles };
}

/** Moves over every statement whose last need is met. What is left hangs on a circle. */
function settle(ordered: Statement[], waiting: Map<Statement, number>): void {
  for (let i = 0; i < ordered.length; i++) {
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

const needsAmong = (waiting: ReadonlyMap<Statement, number>, statement: Statement): Statement[] =>
  [...statement.uses].flatMap((name) => name.definitions.filter((definition) => waiting.has(definition)));

/**
 * Strongly connected components after Tarjan, each behind those that it needs, with a stack of our own in place of
 * recursion.
 */
function componentsOf(waiting: ReadonlyMap<Statement, number>): Statement[][] {
  const index = new Map<Statement, number>();
  const lowest = new Map<Statement, number>();
  const open: Statement[] = [];
  const isOpen = new Set<Statement>();
  const components: Statement[][] = [];
  const path: { readonly statement: Statement; readonly needs: readonly Statement[]; next: number }[] = [];
  const enter = (statement: Statement) => {
    lowest.set(statement, index.size);
    index.set(statement, index.size);
    open.push(statement);
    isOpen.add(statement);
    path.push({ statement, needs: needsAmong(waiting, statement), next: 0 });
  };
  const lower = (statement: Statement, to: number) => lowest.set(statement, Math.min(lowest.get(statement)!, to));
  for (const root of waiting.keys()) {
    if (!index.has(root)) {
      enter(root);
    }
    for (let step = path.at(-1); step; step = path.at(-1)) {
      const { statement } = step;
      const need = step.needs[step.next++];
      if (need !== undefined) {
        if (!index.has(need)) {
          enter(need);
        } else if (isOpen.has(need)) {
          lower(statement, index.get(need)!);
        }
        continue;
      }
      path.pop();
      const above = path.at(-1)?.statement;
      if (above) {
        lower(above, lowest.get(statement)!);
      }
      if (lowest.get(statement) === index.get(statement)) {
        const component = open.splice(open.lastIndexOf(statement));
        for (const member of component) {
          isOpen.delete(member);
        }
        components.push(component);
      }
    }
  }
  return components;
}
