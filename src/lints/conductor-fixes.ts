import { type Conductor, conductorText } from '../functions';
import { type CallRecord, children, Node, spanOf } from '../language';
import type { Fix } from '../text';
import { argumentNode, ungrouped } from './argument-places';
import type { LintedStatement } from './contract';

/** Solid conductors above this area, in mm², are not in the tables: a word `solid` cannot stay there. */
const largestSolidMm2 = 9;

/**
 * One fix for each size that would do: the size is replaced where the conductor is written, and its words stay. A
 * conductor that is written elsewhere is named anew at the argument, so that other uses of the name keep theirs.
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
  const designation = ungrouped(tree, argument);
  const size = [...children(tree, designation)].find((child) => tree.kinds[child] === Node.Size);
  return sufficient.map((conductor) => {
    const solidCannotStay = written.strandingGiven && written.stranding === 'solid' && isAboveSolid(conductor);
    const edit =
      size === undefined || solidCannotStay
        ? { span: spanOf(tree, argument), newText: conductorText(conductor) }
        : { span: spanOf(tree, size), newText: conductor.size.text };
    return { title: `Use ${conductor.size.text}`, edits: [edit], safe: false };
  });
}

const isAboveSolid = (conductor: Conductor): boolean => conductor.size.mm2 > largestSolidMm2;

/** `Use 10 AWG Cu THHN or larger.`, or what to do when no size would help. */
export const sizeAdvice = (sufficient: readonly Conductor[]): string =>
  sufficient.length > 0
    ? `Use ${conductorText(sufficient[0])} or larger.`
    : 'No single size in the tables would do: split the load or use parallel sets.';
