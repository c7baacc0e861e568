import { children, Node, nearest, spanOf, textOf } from '../../language';
import type { Fix, Span } from '../../text';
import { defineLint } from '../contract';

/** An `allow` of something that no lint is called. The same is found in a sheet's front matter, below `severities`. */
export const unknownLint = defineLint({
  id: 'unknown-lint',
  summary: 'An `allow` or a line below `severities:` names no lint.',
  why:
    'What is misspelled silences nothing: the finding that was meant to be accepted stays, and its reason does not reach the ' +
    'report.',
  sources: ['common practice, no source'],
  severity: 'warning',
  silent: ['The name is that of a lint, whether or not it has a finding there.'],
  fix: 'Writes the lint’s name that comes nearest, on a person’s word.',
  examples: {
    bad: [
      'allow voltage-dorp "the shed is far away"\nshed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 12 AWG Cu THHN)\n',
    ],
    good: [
      'allow voltage-drop "the shed is far away"\nshed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 12 AWG Cu THHN)\n',
    ],
  },
  looksAt: [Node.Allow],
  check({ tree, node, lintIds }, report) {
    const [name] = [...children(tree, node)];
    if (tree.kinds[node] === Node.Allow && name !== undefined && lintIds && !lintIds.has(textOf(tree, name))) {
      report({ span: spanOf(tree, name), ...unknownLintNamed(textOf(tree, name), spanOf(tree, name), lintIds) });
    }
  },
});

/** What is to be said of a name that no lint has, wherever it stands. */
export function unknownLintNamed(
  id: string,
  span: Span,
  ids: Iterable<string>,
): { readonly message: string; readonly fixes: readonly Fix[] } {
  const near = nearest(id, [...ids]);
  return {
    message: `No warning is called \`${id}\`${near ? `; \`${near}\` comes near` : ''}. It has no effect here.`,
    fixes: near ? [{ title: `Write ${near}`, edits: [{ span, newText: near }], safe: false }] : [],
  };
}
