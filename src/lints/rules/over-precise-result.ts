import { figure } from '../../functions';
import { children, Node, type SyntaxTree, spanOf, textOf } from '../../language';
import type { Fix } from '../../text';
import { defineLint } from '../contract';
import { ohmDimension } from '../readings';
import { ampereDimension, voltDimension, wattDimension, writtenBase } from '../written-values';

/** No meter of the trade shows more digits than this in amperes, volts, ohms or watts. */
const mostDigits = 5;

/** A value written this many decimal places finer than its own limits claims too much. */
const finerThanLimits = 2;

const measuredDimensions = new Set([ampereDimension, voltDimension, wattDimension, ohmDimension]);

/** More digits than a reading can have. */
export const overPreciseResult = defineLint({
  id: 'over-precise-result',
  summary: 'A value is written with more digits than it was known to.',
  why:
    'Digits claim knowledge. 16.6667 A worked out from a reading of a tenth of an ohm is known to about 16.7 A. Carry the ' +
    'calculation in the sheet, which keeps every digit and prints those that mean something.',
  sources: ['JCGM 100 (GUM), 7.2.6: digits of a result follow its uncertainty'],
  severity: 'information',
  silent: [
    'The value has five digits or fewer.',
    'It is a value in between that the sheet works out itself.',
    'It is read by a meter that is stated, or carries a standard uncertainty.',
    'It is not in amperes, volts, ohms or watts.',
  ],
  fix: 'Writes four digits in place of the many, on a person’s word.',
  examples: { bad: ['current = 16.6667 A\ntwice = 2 * current\n'], good: ['current = 240 V / 14.4 Ω\n'] },
  looksAt: [Node.Quantity],
  check(statement, report) {
    const { tree, node } = statement;
    const expression = [...children(tree, node)][1];
    if (tree.kinds[node] !== Node.Definition || expression === undefined) {
      return;
    }
    if (tree.kinds[expression] === Node.Quantity) {
      const digits = digitsOf(textOf(tree, expression));
      if (digits > mostDigits && tree.decimals[expression] > 0 && isMeasured(tree, expression)) {
        report({
          span: spanOf(tree, expression),
          message: `${textOf(tree, expression)} has ${digits} digits, more than any reading of the trade. Let the sheet work it out, or write ${shorter(tree, expression)}.`,
          fixes: rounding(tree, expression),
        });
      }
      return;
    }
    const [value, limit] = tree.kinds[expression] === Node.PlusMinus ? [...children(tree, expression)] : [];
    if (value === undefined || limit === undefined || !areLike(tree, value, limit)) {
      return;
    }
    const finer = tree.decimals[value] - tree.decimals[limit];
    if (finer >= finerThanLimits) {
      report({
        span: spanOf(tree, value),
        message: `${textOf(tree, value)} is written ${finer} decimal places finer than its limits of ${textOf(tree, limit)}; those digits say nothing.`,
      });
    }
  },
});

/** Two written quantities of one unit. */
const areLike = (tree: SyntaxTree, value: number, limit: number): boolean =>
  tree.kinds[value] === Node.Quantity && tree.kinds[limit] === Node.Quantity && tree.units[value] === tree.units[limit];

/** Digits of the number at the front, leading zeros apart. */
const digitsOf = (text: string): number =>
  (/^[\d.,\s]+/.exec(text)?.[0] ?? '').replace(/\D/g, '').replace(/^0+/, '').length;

const isMeasured = (tree: SyntaxTree, node: number): boolean => {
  const written = writtenBase(tree, node);
  return written !== undefined && measuredDimensions.has(written.dimension);
};

const shorter = (tree: SyntaxTree, node: number): string =>
  `${figure(tree.numbers[node])} ${tree.unitTexts[tree.units[node]]}`;

const rounding = (tree: SyntaxTree, node: number): Fix[] => {
  const newText = shorter(tree, node);
  return [{ title: `Write ${newText}`, edits: [{ span: spanOf(tree, node), newText }], safe: false }];
};
