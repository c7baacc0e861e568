import { stringify } from 'csv-stringify/sync';
import { shownUnit, showValue, toLatex, toMarkdown, toText, valueTable, verdictWords, withoutNoise } from '../display';
import type { StatementResult } from '../language';
import { fromBase } from '../units';
import { shownBlocks } from './shown-blocks';

/** The forms that a result can be copied in, with what each is for. */
export const copyForms = {
  text: { label: 'Text', use: 'as the cell shows it, for a message or a terminal' },
  markdown: { label: 'Markdown', use: 'with typeset formulas' },
  latex: { label: 'LaTeX', use: 'formulas for a typeset paper' },
  table: { label: 'Table', use: 'cells parted by tabs, for a spreadsheet' },
} as const;

export type CopyForm = keyof typeof copyForms;

/** Results of a cell in a form for the clipboard; empty where there are none. */
export function copied(results: readonly StatementResult[], form: CopyForm): string {
  if (form === 'table') {
    return stringify(results.flatMap(tableRows), { delimiter: '\t' });
  }
  const blocks = results.flatMap((result) => shownBlocks(result));
  return { text: toText, markdown: toMarkdown, latex: toLatex }[form](blocks);
}

/** A name, its number with full precision and its unit, and between what bounds it lies; a table's rows as they are. */
function tableRows(result: StatementResult): (string | number)[][] {
  const { name = '', label = name, value, verdict } = result;
  const table = value && valueTable(value);
  if (table) {
    return [[name], table.head, ...table.rows].map((row) => row.map(safe));
  }
  if (value?.kind === 'quantity') {
    const unit = shownUnit(value);
    const number = (base: number) => withoutNoise(fromBase(base, unit));
    const { uncertainty } = value;
    const bounds = uncertainty ? ['from', number(uncertainty.low), 'to', number(uncertainty.high)] : [];
    return [[safe(name), number(value.base), unit.symbol, ...bounds]];
  }
  const text = verdict ? verdictWords[verdict] : value && showValue(value);
  return text === undefined ? [] : [[safe(label), safe(text)]];
}

/** A text that a spreadsheet would take for a formula gets an apostrophe in front. */
const safe = (text: string): string => (/^[=+@\t\r]|^-(?!\d)/.test(text) ? `'${text}` : text);
