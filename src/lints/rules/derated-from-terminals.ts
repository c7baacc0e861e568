import { type AmpacityFact, conductorText, figure } from '../../functions';
import { children, Node, nodesBelow, Operator, spanOf } from '../../language';
import { defineLint } from '../contract';
import { cited, editionOf } from '../editions';
import { callBehind, type Place, resolved } from '../readings';

/** Percent that are left for more than three current-carrying conductors together. */
const adjustments: ReadonlySet<number> = new Set([80, 70, 50, 45, 40, 35]);

const anyAmpacity = /\bampacity\b/;

/** A bundling adjustment taken from what the terminals allow. */
export const deratedFromTerminals = defineLint({
  id: 'derated-from-terminals',
  summary: 'Bundling is taken off the ampacity that the terminals already limit.',
  why:
    'Heat in a bundle works on the insulation, so the adjustment starts from the insulation’s column; the terminals’ column ' +
    'is a ceiling on the outcome. Taken off the ceiling, nine 12 AWG come to 14 A where 21 A are allowed.',
  sources: ['NEC 310.15(B), 310.15(C)(1); 110.14(C)'],
  severity: 'warning',
  silent: [
    'The insulation’s column is also that of the terminals.',
    'Derating and not the terminals limits the ampacity.',
    'The number of conductors is given as `bundled:`.',
  ],
  examples: {
    bad: ['nine = 0.7 * ampacity(12 AWG Cu THHN)\n'],
    good: ['nine = ampacity(12 AWG Cu THHN, bundled: 9)\n'],
  },
  looksAt: [Node.Binary],
  check(statement, report) {
    const { tree, node } = statement;
    if (!statement.sheet.mentions(anyAmpacity)) {
      return;
    }
    for (const product of nodesBelow(tree, node)) {
      if (tree.kinds[product] !== Node.Binary || tree.operators[product] !== Operator.Multiply) {
        continue;
      }
      const [left, right] = [...children(tree, product)];
      for (const [factor, carried] of [
        [left, right],
        [right, left],
      ]) {
        const percent = percentOf({ ...statement, node: factor });
        const call = percent === undefined ? undefined : callBehind(statement, { ...statement, node: carried })?.call;
        const fact = call?.facts.find((found) => found.about === 'ampacity') as AmpacityFact | undefined;
        if (percent !== undefined && call?.function === 'ampacity' && fact?.limitedBy === 'terminals') {
          const right = Math.min((fact.derated * percent) / 100, fact.terminalBase);
          report({
            span: spanOf(tree, product),
            message: `${percent} % is taken off the ${figure(fact.ampacity)} A that the terminals allow ${conductorText(fact.conductor)}. It starts from the ${fact.insulationColumn} °C column, ${figure(fact.derated)} A, and the terminals limit the outcome: ${figure(right)} A (${cited(editionOf(statement.program.library.settings), '310.15')}). Give the number as \`bundled:\`.`,
          });
        }
      }
    }
  },
});

/** `0.7` or `70 %` as percent, when it is one of the adjustments. */
function percentOf(start: Place): number | undefined {
  const { tree, node } = resolved(start);
  const isPercent = tree.kinds[node] === Node.Quantity && tree.unitTexts[tree.units[node]] === '%';
  const percent = isPercent
    ? tree.numbers[node]
    : tree.kinds[node] === Node.Number
      ? tree.numbers[node] * 100
      : undefined;
  const whole = percent === undefined ? undefined : Math.round(percent);
  return whole !== undefined && percent !== undefined && Math.abs(whole - percent) < 1e-9 && adjustments.has(whole)
    ? whole
    : undefined;
}
