import { figure } from '../../functions';
import { children, Node, nodesBelow, Operator, spanOf } from '../../language';
import { ungrouped } from '../argument-places';
import { defineLint } from '../contract';
import { voltDimension, writtenBase } from '../written-values';

/** Line to line against line to neutral: 2 for the legs of a single-phase three-wire system, √3 for a wye. */
const ratios = [2, Math.sqrt(3)];
const within = 0.02;
/** Below and above these, in volts, no supply system is named by two voltages here. */
const least = 100;
const most = 1000;

/** `120/240 V`, which names a system on a drawing and is a division in a cell. */
export const twoVoltages = defineLint({
  id: 'two-voltages',
  summary: 'The two voltages of a system are written as one value, and one is divided by the other.',
  why:
    'On a drawing 120/240 V names a system. In a cell the stroke divides, and what comes out is half of one over a volt, which ' +
    'no formula can use. A load sees one of the two voltages, and which one decides its current.',
  sources: ['common practice, no source'],
  severity: 'warning',
  silent: [
    'Both figures carry a unit: `240 V / 120 V` is a ratio.',
    'The two are not those of one system: `1000/240 V`.',
  ],
  fix: 'Writes one of the two voltages, on a person’s word.',
  examples: {
    bad: ['supply = 120/240 V\ncurrent = 4.8 kW * supply\n'],
    good: ['supply = 240 V    // across both legs of 120/240 V\ncurrent = 4.8 kW / supply\n'],
  },
  looksAt: [Node.Binary],
  check({ tree, node }, report) {
    for (const division of nodesBelow(tree, node)) {
      if (tree.kinds[division] !== Node.Binary || tree.operators[division] !== Operator.Divide) {
        continue;
      }
      const [left, right] = [...children(tree, division)].map((side) => ungrouped(tree, side));
      const written = tree.kinds[right] === Node.Quantity ? writtenBase(tree, right) : undefined;
      if (tree.kinds[left] !== Node.Number || written?.dimension !== voltDimension) {
        continue;
      }
      const volts = [tree.numbers[left], tree.numbers[right]] as const;
      const [low, high] = [Math.min(...volts), Math.max(...volts)];
      const isSystem = ratios.some((ratio) => Math.abs(high / low / ratio - 1) < within);
      if (!isSystem || low < least || high > most || written.base !== tree.numbers[right]) {
        continue;
      }
      const span = spanOf(tree, division);
      const text = tree.text.slice(span.start, span.end);
      report({
        span,
        message: `\`${text}\` divides ${figure(volts[0])} by ${figure(volts[1])} V. Write the voltage that the load is connected to, ${figure(high)} V line to line or ${figure(low)} V line to neutral; where both are needed, each under a name of its own.`,
        fixes: [high, low].map((one) => ({
          title: `Write ${figure(one)} V`,
          edits: [{ span, newText: `${figure(one)} V` }],
          safe: false,
        })),
      });
    }
  },
});
