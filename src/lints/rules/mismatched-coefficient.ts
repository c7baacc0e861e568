import { children, Node, nodesBelow, Operator, type SyntaxTree, spanOf } from '../../language';
import type { Fix } from '../../text';
import { ungrouped } from '../argument-places';
import { defineLint, type LintedStatement } from '../contract';
import { resolved } from '../readings';

/** Temperature coefficients as tables print them, each with the reference temperature it holds for, in °C. */
const coefficients = [
  { value: 0.00393, at: 20, metal: 'copper', other: 0.00323 },
  { value: 0.00403, at: 20, metal: 'aluminum', other: 0.0033 },
  { value: 0.00323, at: 75, metal: 'copper', other: 0.00393 },
  { value: 0.0033, at: 75, metal: 'aluminum', other: 0.00403 },
] as const;

/** A temperature coefficient with another reference temperature than its own. */
export const mismatchedCoefficient = defineLint({
  id: 'mismatched-coefficient',
  summary: 'A temperature coefficient of resistance is used from another temperature than it holds for.',
  why:
    'The coefficient says how much of the resistance at its own reference temperature a degree adds. From a 75 °C figure, ' +
    '0.00393 makes copper at 20 °C 0.784 of it, where 0.822 is right: five percent of every length.',
  sources: ['NEC Chapter 9 Table 8, note 2: 0.00323 and 0.00330 at 75 °C', 'IEC 60028: 0.00393 at 20 °C'],
  severity: 'warning',
  silent: ['Coefficient and base temperature match.', '`resistance_at` is used: it keeps them together.'],
  fix: 'Writes the coefficient that goes with the base, on a person’s word.',
  examples: {
    bad: ['t = 20\nfactor = 1 + 0.00393 * (t - 75)\n'],
    good: ['t = 20\nfactor = 1 + 0.00323 * (t - 75)\n'],
  },
  looksAt: [Node.Binary],
  check(statement, report) {
    const { tree, node } = statement;
    for (const product of nodesBelow(tree, node)) {
      if (tree.kinds[product] !== Node.Binary || tree.operators[product] !== Operator.Multiply) {
        continue;
      }
      const [left, right] = [...children(tree, product)];
      const found = matched(statement, left, right) ?? matched(statement, right, left);
      if (found) {
        const { coefficient, base, literal } = found;
        report({
          span: spanOf(tree, product),
          message: `${coefficient.value} is the coefficient of ${coefficient.metal} at ${coefficient.at} °C and is multiplied by degrees from ${base} °C. From ${base} °C it is ${coefficient.other}; \`resistance_at\` keeps the two together.`,
          fixes: literal === undefined ? [] : replacement(tree, literal, coefficient.other),
        });
      }
    }
  },
});

/** A coefficient on one side, and a difference from the other reference temperature on the other. */
function matched(statement: LintedStatement, factor: number, difference: number) {
  const { tree } = statement;
  const inner = ungrouped(tree, difference);
  if (tree.kinds[inner] !== Node.Binary || tree.operators[inner] !== Operator.Subtract) {
    return undefined;
  }
  const place = resolved({ ...statement, node: factor });
  const number = numberAt(place.tree, place.node);
  const coefficient = coefficients.find(({ value }) => value === number);
  if (!coefficient) {
    return undefined;
  }
  const [, subtracted] = [...children(tree, inner)];
  const from = resolved({ ...statement, node: subtracted });
  const base = numberAt(from.tree, from.node);
  const isOther = (base === 20 || base === 75) && base !== coefficient.at;
  const literal = tree.kinds[ungrouped(tree, factor)] === Node.Number ? ungrouped(tree, factor) : undefined;
  return isOther ? { coefficient, base, literal } : undefined;
}

const numberAt = (tree: SyntaxTree, node: number): number | undefined =>
  tree.kinds[node] === Node.Number || tree.kinds[node] === Node.Quantity ? tree.numbers[node] : undefined;

const replacement = (tree: SyntaxTree, node: number, value: number): Fix[] => [
  { title: `Use ${value}`, edits: [{ span: spanOf(tree, node), newText: String(value) }], safe: false },
];
