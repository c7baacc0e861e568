import type { Statement } from '../checking/binding';

/** Statements in an order in which each comes after what it needs, and those that need themselves in a circle. */
export interface DependencyOrder {
  readonly ordered: readonly Statement[];
  readonly circles: readonly (readonly Statement[])[];
}

/** Not among the statements being ordered; or ordered already. */
const done = -1;

/** Orders statements, each given once, by what they use of each other. Takes no recursion: a chain may be as long as the sheet. */
export function orderByDependency(statements: readonly Statement[]): DependencyOrder {
  for (const statement of statements) {
    statement.waitsFor = 0;
  }
  const ordered: Statement[] = [];
  for (const statement of statements) {
    let count = 0;
    for (const { definition } of statement.uses) {
      count += definition === undefined || definition.waitsFor === done ? 0 : 1;
    }
    statement.waitsFor = count;
    if (count === 0) {
      ordered.push(statement);
    }
  }
  settle(ordered);
  const circles: (readonly Statement[])[] = [];
  if (ordered.length < statements.length) {
    const waiting = statements.filter((statement) => statement.waitsFor !== done);
    for (const component of componentsOf(waiting)) {
      ordered.push(...component);
      const [first] = component;
      if (component.length > 1 || needsAmong(first).includes(first)) {
        circles.push(component);
      }
    }
    for (const statement of waiting) {
      statement.waitsFor = done;
    }
  }
  return { ordered, circles };
}

/** Moves over every statement whose last need is met. What is left hangs on a circle. */
function settle(ordered: Statement[]): void {
  for (let i = 0; i < ordered.length; i++) {
    ordered[i].waitsFor = done;
    const name = ordered[i].defines;
    // A name with several definitions has no value, so nothing waits for it.
    if (name?.definition) {
      for (const user of name.users) {
        if (user.waitsFor > 0 && --user.waitsFor === 0) {
          ordered.push(user);
        }
      }
    }
  }
}

const needsAmong = (statement: Statement): Statement[] =>
  statement.uses.flatMap(({ definition }) => (definition && definition.waitsFor !== done ? definition : []));

/**
 * Strongly connected components after Tarjan, each behind those that it needs, with a stack of our own in place of
 * recursion.
 */
function componentsOf(waiting: readonly Statement[]): Statement[][] {
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
    path.push({ statement, needs: needsAmong(statement), next: 0 });
  };
  const lower = (statement: Statement, to: number) => lowest.set(statement, Math.min(lowest.get(statement)!, to));
  for (const root of waiting) {
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
