import { children, type Library, Node, nodesBelow, parse, type SyntaxTree, textOf } from '../../language';
import { liveSpans } from '../../notebook';
import type { Span } from '../../text';
import { readUnit } from '../../units';
import { valueNames } from '../value-names';

/** Where a name stands in the live values of a prose cell; with `schedule`, the name of one of its columns. */
export function liveNames(text: string, name: string, { vocabulary }: Library, schedule?: string): Span[] {
  return liveSpans(text).flatMap(({ start, end }) => {
    const tree = parse(text.slice(start, end), vocabulary, { readUnit });
    return tree.statements.flatMap((statement) =>
      tree.kinds[statement] === Node.Show
        ? (schedule === undefined ? [...valueNames(tree, statement)] : fieldsOf(tree, statement, schedule))
            .filter((node) => textOf(tree, node) === name)
            .map((node) => ({ start: start + tree.starts[node], end: start + tree.ends[node] }))
        : [],
    );
  });
}

/** What stands behind a record's name and a point. */
const fieldsOf = (tree: SyntaxTree, statement: number, record: string): number[] =>
  [...nodesBelow(tree, statement)].flatMap((node) => {
    const [first, field] = tree.kinds[node] === Node.Member ? children(tree, node) : [];
    return first !== undefined && field !== undefined && textOf(tree, first) === record ? [field] : [];
  });
