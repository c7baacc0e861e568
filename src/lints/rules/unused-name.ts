import { children, Node, spanOf, textOf } from '../../language';
import { ungrouped } from '../argument-places';
import { defineLint } from '../contract';

/** What a given value may be written as; everything else is a result, and a result needs no further use. */
const givens: ReadonlySet<Node> = new Set([Node.Quantity, Node.Number, Node.Reading, Node.PlusMinus, Node.Designation]);

/** A given value that nothing uses. */
export const unusedName = defineLint({
  id: 'unused-name',
  summary: 'A given value is used nowhere.',
  why:
    'A length, a voltage or a conductor that is stated and never used is often a slip: the calculation goes by another ' +
    'number than the one that its reader sees, and a change here changes nothing.',
  sources: ['common practice, no source'],
  severity: 'hint',
  silent: [
    'It is used in a cell or in live prose.',
    'It is a result: results are what a sheet is for.',
    'The sheet has errors: what they hide may use it.',
    'The sheet works nothing out and only states values, as one that others take from.',
  ],
  examples: {
    bad: ['run = 62 ft\ndrop = voltage_drop(12 AWG Cu, 10 A, 60 ft)\n'],
    good: ['run = 62 ft\ndrop = voltage_drop(12 AWG Cu, 10 A, run)\n'],
  },
  looksAt: [Node.Definition, Node.Input],
  check({ tree, node, sheet }, report) {
    const [name, expression] = [...children(tree, node)];
    const isGiven =
      tree.kinds[node] === Node.Input ||
      (expression !== undefined && givens.has(tree.kinds[ungrouped(tree, expression)]));
    if (name === undefined || !isGiven || !sheet.worksOut() || sheet.uses(textOf(tree, name)) || !sheet.isSound()) {
      return;
    }
    report({
      span: spanOf(tree, name),
      message: `Nothing uses \`${textOf(tree, name)}\`: a change here changes no result. Use it where it was meant, or take the line out.`,
    });
  },
});
