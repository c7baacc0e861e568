import { NoValue } from '../machine';
/** Says that a list cannot be used whole, by the first of its places that has no value. */
export function holeMessage(what, holes) {
  const [first] = holes?.values() ?? [];
  if (!first) {
    return `${what} needs a value at every place of the list, and one has none.`;
  }
  const more = holes.size > 1 ? ` and ${holes.size - 1} more` : '';
  return `${what} needs every value, and ${first.place}${more} has none: ${first.why}. Put it in, or leave such places out: \`where known(…)\`.`;
}
/** Stands for a list that could not be used because of its holes. */
export const missingItem = (what, holes, node) => new NoValue('missing-value', holeMessage(what, holes), node);
