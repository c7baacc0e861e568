import type { Diagnostic } from '../../text';
import { noDiagnostics, type Statement } from '../checking/binding';
import { spanOf } from '../syntax/tree';
import type { Runner } from './runner';

/** Says of each call in a statement just run whose result is another one within the doubt of the readings. */
export function turningCalls({ machine }: Runner, { cell, expression }: Statement): readonly Diagnostic[] {
  const { turning } = machine.uncertain;
  if (turning.size === 0) {
    return noDiagnostics;
  }
  return [...turning].map(([{ definition, node }, { tree }]) => ({
    code: 'result-depends-on-doubt',
    severity: 'information',
    span: spanOf(cell.tree, tree === cell.tree ? node : expression),
    message: `Within the doubt of the readings, \`${definition.name}\` gives another result. It is taken at the readings as they stand: narrow the doubt, or take the safer of the two.`,
  }));
}
