import { children, Node, textOf } from '../language';
import { ungrouped } from './argument-places';
import type { LintedStatement } from './contract';
import { definitionOf, longestChain, type Place } from './readings';
import { remarkOn } from './remarks';

/** Names are words too: `lamp_cold` reads as `lamp cold`. */
const asWords = (name: string): string => name.replaceAll('_', ' ');

/** What a statement says of itself: the name that it defines and the remark on its line. */
export function ownWords({ tree, node, result }: LintedStatement): string {
  const first = tree.firstChildren[node];
  const named = first >= 0 && tree.kinds[first] === Node.Name ? asWords(textOf(tree, first)) : '';
  return `${named} ${remarkOn(tree, result.index)}`;
}

/** What the sheet says of an expression: the names that it goes back to and the remarks beside their definitions. */
export function wordsBehind(place: Place): string {
  const words: string[] = [];
  let current = { ...place, node: ungrouped(place.tree, place.node) };
  for (let steps = 0; steps < longestChain; steps++) {
    const { tree, node } = current;
    if (tree.kinds[node] === Node.Binary || tree.kinds[node] === Node.Convert) {
      // `reading - leads`, `reading / 2`: the reading stands on the left.
      const [left] = [...children(tree, node)];
      current = { ...current, node: ungrouped(tree, left) };
      continue;
    }
    const definition = tree.kinds[node] === Node.Name ? definitionOf(current) : undefined;
    if (!definition) {
      break;
    }
    words.push(asWords(textOf(tree, node)), remarkOn(definition.tree, definition.statement));
    current = { ...definition, node: ungrouped(definition.tree, definition.node) };
  }
  return words.join(' ');
}
