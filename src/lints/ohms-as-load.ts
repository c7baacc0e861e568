import { Node, nodesBelow, spanOf } from '../language';
import type { Span } from '../text';
import { type Dimension, dimensionOf } from '../units';
import { argumentNode, standsHere } from './argument-places';
import type { LintedStatement } from './contract';
import { isOhmReading, resolved } from './readings';
import { ownWords, wordsBehind } from './words';

/** An ohm reading from which a statement works out amperes or watts. */
export interface OhmsAsLoad {
  readonly span: Span;
  /** What the sheet says of the reading and of the statement. */
  readonly words: string;
  readonly ohms: number;
}

const results: ReadonlySet<Dimension> = new Set([
  dimensionOf({ current: 1 }),
  dimensionOf({ mass: 1, length: 2, time: -3 }),
]);

/** The ohm reading that the statement takes for a load's resistance, by hand or with `heater`. */
export function ohmsAsLoad(statement: LintedStatement): OhmsAsLoad | undefined {
  const { tree, result } = statement;
  for (const call of statement.calls) {
    const node = argumentNode(statement, call, 'resistance');
    const value = call.arguments.get('resistance')?.value;
    if (call.function === 'heater' && node !== undefined && standsHere(statement, call) && value?.kind === 'quantity') {
      const place = { ...statement, node };
      const saysHot = call.arguments.get('hot_factor')?.given || call.arguments.get('kind')?.given;
      return !saysHot && isOhmReading(place) ? found(statement, node, value.base) : undefined;
    }
  }
  const { value } = result;
  if (value?.kind !== 'quantity' || !results.has(value.type.dimension)) {
    return undefined;
  }
  for (const node of nodesBelow(tree, statement.node)) {
    const kind = tree.kinds[node];
    if ((kind === Node.Name || kind === Node.Quantity || kind === Node.Reading) && node !== nameOf(statement)) {
      const place = { ...statement, node };
      if (isOhmReading(place)) {
        const { tree: at, node: literal } = resolved(place);
        return found(statement, node, at.kinds[literal] === Node.Quantity ? at.numbers[literal] : Number.NaN);
      }
    }
  }
  return undefined;
}

const nameOf = ({ tree, node }: LintedStatement): number => tree.firstChildren[node];

const found = (statement: LintedStatement, node: number, ohms: number): OhmsAsLoad => ({
  span: spanOf(statement.tree, node),
  words: `${ownWords(statement)} ${wordsBehind({ ...statement, node })}`,
  ohms,
});
