import type { CircuitFact } from '../functions';
import type { CallRecord } from '../language';
import { Node, spanOf } from '../language';
import type { Fix } from '../text';
import { argumentInsertion, argumentNode, ungrouped } from './argument-places';
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

/** A circuit with a nameplate's minimum ampacity is most likely an air conditioner's: offers to say so. */
export const nameplateKindFix = (statement: LintedStatement, call: CallRecord, fact: CircuitFact): Fix[] =>
  fact.mca === undefined ? [] : statementFix(statement, call, 'kind', 'hvac', 'State `kind: hvac`');

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
