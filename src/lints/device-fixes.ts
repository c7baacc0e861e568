import type { CircuitFact, CircuitKind } from '../functions';
import type { CallRecord } from '../language';
import { Node, spanOf } from '../language';
import type { Fix } from '../text';
import { dimensionOf } from '../units';
import { argumentInsertion, argumentNode, ungrouped } from './argument-places';
import { exceeds } from './circuit-facts';
import type { LintedStatement } from './contract';

/** Replaces the rating of the overcurrent device where it is written as a plain quantity. */
export function ratingFix(statement: LintedStatement, call: CallRecord, rating: number): Fix[] {
  const argument = argumentNode(statement, call, 'ocpd');
  if (argument === undefined || statement.tree.kinds[ungrouped(statement.tree, argument)] !== Node.Quantity) {
    return [];
  }
  const edit = { span: spanOf(statement.tree, argument), newText: `${rating} A` };
  return [{ title: `Use ${rating} A`, edits: [edit], safe: false }];
}

/**
 * Offers to state the kinds that explain the device and that can be worked out from what the sheet holds: an air
 * conditioner needs its nameplate's minimum ampacity, a motor its current.
 */
export function kindFixes(statement: LintedStatement, call: CallRecord, fact: CircuitFact): Fix[] {
  const load = call.arguments.get('load')?.value;
  const isCurrent = load?.kind === 'quantity' && load.type.dimension === currentDimension;
  const kinds: CircuitKind[] = [
    ...(isCurrent && !exceeds(fact.ocpd, fact.largestMotorOcpd) ? ['motor' as const] : []),
    ...(fact.mca === undefined ? [] : ['hvac' as const]),
  ];
  return kinds.flatMap((kind) => statementFix(statement, call, 'kind', kind, `State \`kind: ${kind}\``));
}

const currentDimension = dimensionOf({ current: 1 });

/** Adds an argument that the sheet left out; never safe, because it states a fact about the installation. */
export function statementFix(
  statement: LintedStatement,
  call: CallRecord,
  parameter: string,
  value: string,
  title: string,
): Fix[] {
  const edit = argumentInsertion(statement, call, parameter, value);
  return edit ? [{ title, edits: [edit], safe: false }] : [];
}
