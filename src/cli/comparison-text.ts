import { type Change, isSame, type SheetComparison } from '../core';
import { showNumber } from '../display';
import type { TextStyle } from './sheet-text';
import { wrap } from './wrap';

/** Two sheets' differences for a terminal: what was behind a minus, what is behind a plus. */
export function comparisonText(
  { before, after }: { readonly before: string; readonly after: string },
  comparison: SheetComparison,
  style: TextStyle,
): string {
  const { colours } = style;
  const { inputs, results, checks, findings, takeoff } = comparison;
  const title = `${colours.red(`- ${before}`)}\n${colours.green(`+ ${after}`)}`;
  if (isSame(comparison)) {
    return `${title}\n\nNo differences in inputs, results, checks, findings or quantities.\n`;
  }
  const found = [
    ...findings.gone.map(({ code, message }) => colours.red(wrap(`${code}: ${message}`, style.width, '    ', '  - '))),
    ...findings.added.map(({ code, message }) =>
      colours.green(wrap(`${code}: ${message}`, style.width, '    ', '  + ')),
    ),
  ];
  const parts = [
    title,
    section('Inputs', inputs, style),
    section('Results', results, style),
    section('Checks', checks, style),
    found.length > 0 ? [colours.bold('Findings'), ...found].join('\n') : '',
    section('To order', takeoff, style),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function section(title: string, changes: readonly Change[], style: TextStyle): string {
  const lines = changes.flatMap((change) => changeLines(change, style));
  return lines.length > 0 ? [style.colours.bold(title), ...lines].join('\n') : '';
}

function changeLines({ name, before, after, percent }: Change, { colours, width }: TextStyle): string[] {
  const by = percent === undefined ? '' : colours.dim(`  ${percent > 0 ? '+' : ''}${showNumber(percent, 3)} %`);
  return [
    `  ${name}${by}`,
    ...(before === undefined ? [] : [colours.red(wrap(before, width, '      ', '    - '))]),
    ...(after === undefined ? [] : [colours.green(wrap(after, width, '      ', '    + '))]),
  ];
}
