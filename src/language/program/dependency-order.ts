import type { Statement } from '../checking/binding';

/** Statements in an order in which each comes after what it needs, and those that need themselves in a circle. */
export interface DependencyOrder {
  readonly ordered: readonly Statement[];
  readonly circles: readonly (readonly Statement[])[];
}

/** Not among the statements being ordered; or ordered already. */
const done = -1;

/**
 * Orders statements, each given once, by what they use of each other; those that come after what they need already keep
 * their places. Takes no recursion: a chain may be as long as the sheet.
 */
export function orderByDependency(statements: readonly Statement[]): DependencyOrder {
  for (const statement of statements) {
    statement.waitsFor = 0;
  }
  let inPlace = 0;
  while (inPlace < statements.length && needsOpen(statements[inPlace]) === 0) {
    statements[inPlace].waitsFor = done;
    inPlace++;
  }
  if (inPlace === statements.length) {
    return { ordered: statements, circles: [] }; // As in a sheet that is written from its top to its end.
  }
  const ordered = statements.slice(0, inPlace);
  for (let i = inPlace; i < statements.length; i++) {
    const statement = statements[i];
    statement.waitsFor = needsOpen(statement);
    if (statement.waitsFor === 0) {
      place(statement, ordered);
      // While everything looked at is in place, nothing has waited for this one.
      if (ordered.length <= i) {
        placeUsers(ordered);
      }
    }
  }
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

/** How many of the statements being ordered one needs that are not in place. */
function needsOpen({ cell, usesFrom, usesEnd }: Statement): number {
  let count = 0;
  for (let i = usesFrom; i < usesEnd; i++) {
    const { definition } = cell.uses[i];
    count += definition === undefined || definition.waitsFor === done ? 0 : 1;
  }
  return count;
}

function place(statement: Statement, ordered: Statement[]): void {
  statement.waitsFor = done;
  ordered.push(statement);
}

/** Places every statement whose last need the last one in place was, and so on. */
function placeUsers(ordered: Statement[]): void {
  for (let i = ordered.length - 1; i < ordered.length; i++) {
    const name = ordered[i].defines;
    // A name with several definitions has no value, so nothing waits for it.
    for (const user of name?.definition ? name.users : []) {
      // One that was not looked at yet waits for nothing.
      if (user.waitsFor > 0 && --user.waitsFor === 0) {
        place(user, ordered);
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
