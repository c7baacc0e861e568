import { children, Node, spanOf, textOf } from '../../language';
import { defineLint } from '../contract';

/** An `allow` that silences nothing. */
export const allowWithoutEffect = defineLint({
  id: 'allow-without-effect',
  summary: 'An `allow` names a lint that has nothing to say about the statement below it.',
  why:
    'An `allow` tells a reviewer that a finding was seen and accepted, and why. When the finding is gone, it tells something ' +
    'untrue, and may hide a later finding that nobody has seen.',
  sources: ['common practice, no source'],
  severity: 'information',
  silent: [
    'The lint it names has a finding in the statement below it.',
    'No lint has that name: `unknown-lint` speaks.',
  ],
  fix: 'Takes the line out, on a person’s word.',
  examples: {
    bad: ['allow voltage-drop "the shed is far away"\nshed = 12 A * 2 Ω\n'],
    good: [
      'allow leads-not-removed "zeroed on the leads"\nleft = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 20 °C)\n',
    ],
  },
  looksAt: [Node.Allow],
  check({ tree, node, silenced, lintIds }, report) {
    const [name] = [...children(tree, node)];
    if (tree.kinds[node] !== Node.Allow || name === undefined || !silenced) {
      return;
    }
    const isToTell = lintIds?.has(textOf(tree, name)) && !silenced.has(textOf(tree, name));
    if (!isToTell) {
      return;
    }
    const lineEnd = tree.text.indexOf('\n', tree.ends[node]);
    const line = { start: tree.starts[node], end: lineEnd < 0 ? tree.text.length : lineEnd + 1 };
    report({
      span: spanOf(tree, name),
      message: `No finding of \`${textOf(tree, name)}\` is there to allow in the statement below. Take the line out.`,
      fixes: [{ title: 'Take out this `allow`', edits: [{ span: line, newText: '' }], safe: false }],
    });
  },
});
