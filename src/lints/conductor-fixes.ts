import { type Conductor, conductorText } from '../functions';
import { type CallRecord, children, Node, spanOf, textOf } from '../language';
import type { Fix } from '../text';
import { argumentNode, ungrouped } from './argument-places';
import type { LintedStatement } from './contract';
import { definitionOf } from './readings';

/** Solid conductors above this area, in mm², are not in the tables: a word `solid` cannot stay there. */
const largestSolidMm2 = 9;

/**
 * One fix for each size that would do: the size is replaced where the conductor is written, and its words stay. That is
 * at the argument, or at the definition of a name of the same cell that nothing else uses; any other conductor that is
 * written elsewhere is named anew at the argument, so that other uses of the name keep theirs.
 * Never safe to apply unseen: a larger conductor must also fit the terminals, the raceway and the purse.
 */
export function sizeFixes(
  statement: LintedStatement,
  call: CallRecord,
  parameter: string,
  written: Conductor,
  sufficient: readonly Conductor[],
): Fix[] {
  const argument = argumentNode(statement, call, parameter);
  if (argument === undefined) {
    return [];
  }
  const { tree } = statement;
  const place = ownDefinition(statement, argument) ?? argument;
  const designation = ungrouped(tree, place);
  const size = [...children(tree, designation)].find((child) => tree.kinds[child] === Node.Size);
  return sufficient.map((conductor) => {
    const solidCannotStay = written.strandingGiven && written.stranding === 'solid' && isAboveSolid(conductor);
    const edit =
      size === undefined || solidCannotStay
        ? { span: spanOf(tree, place), newText: conductorText(conductor) }
        : { span: spanOf(tree, size), newText: conductor.size.text };
    return { title: `Use ${conductor.size.text}`, edits: [edit], safe: false };
  });
}

/** The designation behind a name that this argument alone uses, when it stands in the same cell. */
function ownDefinition(statement: LintedStatement, argument: number): number | undefined {
  const { tree, cell, sheet } = statement;
  const name = ungrouped(tree, argument);
  const definition = tree.kinds[name] === Node.Name ? definitionOf({ ...statement, node: name }) : undefined;
  const isHere = definition?.cell === cell && tree.kinds[definition.node] === Node.Designation;
  return isHere && sheet.usesOnce(textOf(tree, name)) ? definition.node : undefined;
}

const isAboveSolid = (conductor: Conductor): boolean => conductor.size.mm2 > largestSolidMm2;

/** `Use 10 AWG Cu THHN or larger.`, or what to do when no size would help. */
export const sizeAdvice = (sufficient: readonly Conductor[]): string =>
  sufficient.length > 0
    ? `Use ${conductorText(sufficient[0])} or larger.`
    : 'No single size in the tables would do: split the load or use parallel sets.';
