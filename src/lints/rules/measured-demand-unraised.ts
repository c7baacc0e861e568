import { children, Node, nodesBelow, Operator, spanOf, textOf } from '../../language';
import { defineLint, type LintedStatement } from '../contract';
import { cited, editionOf } from '../editions';
import { definitionOf } from '../readings';
import { wordsBehind } from '../words';
import { writtenNode } from '../written-values';

const measuredDemand =
  /\b(measured|recorded|metered|maximum|max|peak)\b.*\b(demand|load|peak|amps?)\b|\b(demand|load)\b.*\b(measured|recorded|metered|peak)\b|\bpeak\b.*\bmonths\b/i;
const anyDemand = /demand|peak|measured|recorded|metered/i;
const calculated = /\bcalculated\b|\bconnected\b|\barticle (1|2)20\b/i;

/** A new load on top of a measured demand that was not raised first. */
export const measuredDemandUnraised = defineLint({
  id: 'measured-demand-unraised',
  summary: 'A new load is added to a measured peak demand as it stands.',
  why:
    'An existing load may be taken from its measured peak over a year, or over thirty days under load; that peak counts with ' +
    '125 % before a new load is added, because no record holds the worst day.',
  sources: ['NEC 220.87'],
  severity: 'warning',
  silent: [
    'The measured demand is multiplied by 125 %.',
    'The demand is calculated, and not measured.',
    'Solar production or peak shaving hides the load: then measured demand may not be used at all.',
  ],
  fix: 'Writes `125 % *` before the measured demand, on a person’s word.',
  examples: {
    bad: ['peak_demand = 310 A // measured over 12 months\ntotal = peak_demand + 60 A\n'],
    good: ['peak_demand = 310 A // measured over 12 months\ntotal = 125 % * peak_demand + 60 A\n'],
  },
  looksAt: [Node.Binary],
  check(statement, report) {
    const { tree, node, program } = statement;
    if (!statement.sheet.mentions(anyDemand)) {
      return;
    }
    for (const sum of nodesBelow(tree, node)) {
      if (tree.kinds[sum] !== Node.Binary || tree.operators[sum] !== Operator.Add) {
        continue;
      }
      const measured = [...children(tree, sum)].find((side) => isMeasuredDemand(statement, side));
      if (measured !== undefined) {
        const span = spanOf(tree, measured);
        report({
          span,
          message: `\`${textOf(tree, measured)}\` is a measured peak; 125 % of it counts before a new load is added (${cited(editionOf(program.library.settings), '220.87')}), from a record of a year, or of thirty days with the building in use.`,
          fixes: [
            {
              title: 'Take 125 % of the measured demand',
              edits: [{ span: { start: span.start, end: span.start }, newText: '125 % * ' }],
              safe: false,
            },
          ],
        });
      }
    }
  },
});

function isMeasuredDemand(statement: LintedStatement, side: number): boolean {
  const place = { ...statement, node: side };
  const definition = statement.tree.kinds[side] === Node.Name ? definitionOf(place) : undefined;
  if (!definition || writtenNode(definition.tree, definition.node) === undefined) {
    return false;
  }
  const words = wordsBehind(place);
  return measuredDemand.test(words) && !calculated.test(words);
}
