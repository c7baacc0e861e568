import { figure, type TradeSettings } from '../../functions';
import { children, Node, spanOf } from '../../language';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { conductorNamedIn } from '../named-conductor';
import { remarkOn } from '../remarks';
import { ampereDimension, writtenBase } from '../written-values';

const knowsTerminals = /\bterminals?\b|\bderat|\bbefore\b|\bcolumn\b/i;

/** A column of the ampacity table taken as what a conductor may carry. */
export const columnAsAmpacity = defineLint({
  id: 'column-as-ampacity',
  summary: 'A figure from a hot column of the ampacity table is taken as what the conductor may carry.',
  why:
    'The 90 °C column is where derating of 90 °C insulation starts. What the conductor may carry ends at the column of the ' +
    'terminals it lands on, commonly 60 °C or 75 °C.',
  sources: ['NEC 110.14(C); Table 310.16'],
  severity: 'warning',
  silent: [
    'The remark says the terminals, or that derating starts from the figure.',
    'The figure is that of the terminals’ column.',
    'No conductor is named beside the figure.',
    '`ampacity` is used: it keeps to the terminals.',
  ],
  fix: 'Puts `ampacity` in place of the figure, on a person’s word.',
  examples: {
    bad: ['allowed = 75 A // 6 AWG Cu THHN\ncheck allowed >= 60 A "carries the range"\n'],
    good: ['allowed = ampacity(6 AWG Cu THHN, terminals: 75 °C)\ncheck allowed >= 60 A "carries the range"\n'],
  },
  looksAt: [Node.Quantity],
  check(statement, report) {
    const { tree, node, result } = statement;
    const expression = [...children(tree, node)][1];
    if (tree.kinds[node] !== Node.Definition || expression === undefined || tree.kinds[expression] !== Node.Quantity) {
      return;
    }
    const written = writtenBase(tree, expression);
    const remark = remarkOn(tree, result.index);
    if (written?.dimension !== ampereDimension || remark === '' || knowsTerminals.test(remark)) {
      return;
    }
    const { tables } = statement.program.library.settings as TradeSettings;
    const named = conductorNamedIn(remark);
    const amperes = named && tables.ampacity(named.size)?.row.amperes[named.material];
    if (!named || !amperes) {
      return;
    }
    const usual = usualColumn(named.mm2);
    const column = ([90, 75] as const).find((hot) => hot > usual && amperes[hot] === written.base);
    if (column !== undefined && amperes[usual] !== written.base) {
      report({
        span: spanOf(tree, expression),
        message: `${figure(written.base)} A is the ${column} °C column of ${named.text}; unmarked terminals hold it to ${figure(amperes[usual] ?? 0)} A${column === 90 && usual < 75 ? `, 75 °C ones to ${figure(amperes[75] ?? 0)} A` : ''} (${cited(tables.edition, '110.14(C)')}). Use \`ampacity(${named.text})\`.`,
        fixes: [
          {
            title: `Use ampacity(${named.text})`,
            edits: [{ span: spanOf(tree, expression), newText: `ampacity(${named.text})` }],
            safe: false,
          },
        ],
      });
    }
  },
});

/** Area between 1 AWG and 1/0 AWG, in mm²: above it, unmarked terminals count as 75 °C. */
const above1AwgMm2 = 48;

const usualColumn = (mm2: number): 60 | 75 => (mm2 > above1AwgMm2 ? 75 : 60);
