import type { AmpacityFact } from '../functions';
import { type CallRecord, children, Node, Operator, spanOf } from '../language';
import type { Span } from '../text';
import type { LintedStatement } from './contract';
import { editionOf } from './editions';
import { callBehind } from './readings';

/** A check that fails on an `ampacity(…)` whose terminals are not said, and would pass with 75 °C ones. */
export interface ComparedAmpacity {
  readonly span: Span;
  readonly fact: AmpacityFact & { readonly ampacityAt75: number };
  /** Amperes on the other side. */
  readonly wanted: number;
  readonly edition: string;
  /** The call, when it stands in the check itself. */
  readonly call: CallRecord | undefined;
}

export function unmarkedAmpacityIn(statement: LintedStatement): ComparedAmpacity | undefined {
  const { program, cell, tree, node, result } = statement;
  const condition = tree.firstChildren[node];
  if (tree.kinds[node] !== Node.Check || result.verdict !== 'no' || tree.kinds[condition] !== Node.Binary) {
    return undefined;
  }
  const [left, right] = [...children(tree, condition)];
  const larger = largerSide[tree.operators[condition]];
  if (!larger) {
    return undefined;
  }
  const [carried, load] = larger === 'left' ? [left, right] : [right, left];
  const found = callBehind(statement, { ...statement, node: carried });
  const fact = found?.call.facts.find((candidate) => candidate.about === 'ampacity') as AmpacityFact | undefined;
  const other = program.valueAt(cell, load);
  if (found?.call.function !== 'ampacity' || fact?.ampacityAt75 === undefined || other?.kind !== 'quantity') {
    return undefined;
  }
  const wanted = other.base; // Amperes are coherent SI.
  return fact.ampacityAt75 >= wanted
    ? {
        span: spanOf(tree, carried),
        fact: { ...fact, ampacityAt75: fact.ampacityAt75 },
        wanted,
        edition: editionOf(program.library.settings),
        call: found.here ? found.call : undefined,
      }
    : undefined;
}

/** Which side of a comparison is to be the larger. */
const largerSide: { readonly [operator: number]: 'left' | 'right' | undefined } = {
  [Operator.GreaterOrEqual]: 'left',
  [Operator.Greater]: 'left',
  [Operator.LessOrEqual]: 'right',
  [Operator.Less]: 'right',
};
