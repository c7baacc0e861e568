import { type Library, Node, parse, textOf } from '../../language';
import { liveSpans } from '../../notebook';
import type { Span } from '../../text';
import { readUnit } from '../../units';
import { valueNames } from '../named-places';

/** Where a name stands in the live values of a prose cell. */
export function liveNames(text: string, name: string, { vocabulary }: Library): Span[] {
  return liveSpans(text).flatMap(({ start, end }) => {
    const tree = parse(text.slice(start, end), vocabulary, { readUnit });
    return tree.statements.flatMap((statement) =>
      tree.kinds[statement] === Node.Show
        ? [...valueNames(tree, statement)]
            .filter((node) => textOf(tree, node) === name)
            .map((node) => ({ start: start + tree.starts[node], end: start + tree.ends[node] }))
        : [],
    );
  });
}
