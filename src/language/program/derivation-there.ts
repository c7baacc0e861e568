import type { Statement } from '../checking/binding';
import type { Step, TakenStep } from '../evaluation/trace';

/** How a name taken from another sheet came about there, and the tables and assumptions further back. */
export function derivationThere({ taken }: Statement): Pick<TakenStep, 'steps' | 'behind'> {
  const definition = taken?.name?.definition;
  if (!definition) {
    return { steps: [], behind: [] };
  }
  const behind = new Map<string, Step>();
  for (const statement of needsOf(definition)) {
    for (const step of evidenceIn(statement.result?.trace().steps ?? [])) {
      behind.set(JSON.stringify(step), step);
    }
  }
  return { steps: definition.result?.trace().steps ?? [], behind: [...behind.values()] };
}

/** The statements that one needs, directly or by way of others, nearest first; itself not among them. */
function needsOf(statement: Statement): Statement[] {
  const found = new Set<Statement>([statement]);
  for (const { uses } of found) {
    for (const { definition } of uses) {
      if (definition) {
        found.add(definition);
      }
    }
  }
  return [...found].slice(1);
}

/** What a value rests on that no formula shows. */
const evidenceIn = (steps: readonly Step[]): Step[] =>
  steps.flatMap((step) =>
    step.kind === 'table' || step.kind === 'assumption'
      ? [step]
      : step.kind === 'call' || step.kind === 'row'
        ? evidenceIn(step.steps)
        : [],
  );
