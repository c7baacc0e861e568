import type { Diagnostic } from '../../text';
import type { Statement } from '../checking/binding';
import { relatedPlace } from '../checking/checker';
import { spanOf, textOf } from '../syntax/tree';

/** Says of a name taken from another sheet that it has no value there, and where the fault lies. */
export function takenProblem({ cell, part, taken }: Statement): Diagnostic {
  const { tree } = cell;
  const text = textOf(tree, part);
  const definitions = taken?.name?.definitions ?? [];
  const span = spanOf(tree, part);
  if (definitions.length > 1) {
    const message = `\`${text}\` is defined more than once in "${taken!.file}", so it is not clear which one counts. Mend that sheet.`;
    return { code: 'taken-name-failed', severity: 'error', span, message };
  }
  const culprit = culpritOf(definitions[0]);
  const [first] = problemsOf(culprit);
  const at = first?.span ?? spanOf(culprit.cell.tree, culprit.node);
  const place = culprit.cell.context.place(culprit.cell.id, at);
  const where = place ? ` The fault is in line ${place.line} of ${place.path}` : '';
  const what = first ? `${where}: ${first.message}` : where === '' ? '' : `${where}.`;
  return {
    code: 'taken-name-failed',
    severity: 'error',
    span,
    message: `\`${text}\` has no value in "${taken?.file}".${what}`,
    related: place ? [relatedPlace(culprit.cell, at, first?.message ?? 'The fault is here.')] : [],
  };
}

/** What is wrong with a statement itself, the parser's word first. */
function problemsOf({ cell, node, checkDiagnostics, runDiagnostics }: Statement): Diagnostic[] {
  const { start, end } = spanOf(cell.tree, node);
  const read = cell.tree.diagnostics.filter(({ span }) => start <= span.start && span.start <= end);
  return [...read, ...checkDiagnostics, ...runDiagnostics].filter(({ severity }) => severity === 'error');
}

/** The first statement on the way back that has an error of its own. */
function culpritOf(from: Statement): Statement {
  const seen = new Set<Statement>();
  let statement: Statement | undefined = from;
  let last = from;
  while (statement && !seen.has(statement)) {
    seen.add(statement);
    last = statement;
    if (problemsOf(statement).length > 0) {
      break;
    }
    statement = statement.uses.flatMap(({ definitions }) => definitions).find(({ succeeded }) => !succeeded);
  }
  return last;
}
