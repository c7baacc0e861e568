import type { Statement } from '../checking/binding';
import { replay } from '../evaluation/replay';
import type { Runner } from '../evaluation/runner';
import type { Value } from '../evaluation/value';

/** The value of a part of an equation: as written it never runs, but what an unknown is found from is a copy of it. */
export function valueInEquation(runner: Runner, { cell, unknowns }: Statement, node: number): Value | undefined {
  const copies = cell.meaning.copiesOf(node);
  const ran = unknowns.filter((unknown) => unknown.isCompiled && unknown.succeeded);
  for (const unknown of copies.length > 0 ? ran : []) {
    const values = replay(runner, unknown, (run) => copies.map((copy) => run.value(copy)));
    const value = values.find((one) => one !== undefined);
    if (value) {
      return value;
    }
  }
  return undefined;
}
