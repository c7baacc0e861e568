import type { TableReference } from '../text';
import { citations } from './citations';

/** Keeps text from acting as markup, in a table cell too. */
export const escaped = (text: string): string => text.replace(/[\\`*_{}[\]<>()#+!|~$-]/g, '\\$&').replaceAll('\n', ' ');

/** A pipe table; the cells are Markdown already. Hovers set columns without a gap, so each cell brings its own. */
export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => ':--'), ...rows]
    .map((row, i) => `| ${row.map((cell) => (i === 1 ? cell : `${cell}\u00a0\u00a0`)).join(' | ')} |`)
    .join('\n');

/** A table under its name and the tables that its figures stand in, with a remark below. */
export const captioned = (name: string, sources: readonly TableReference[], rows: string, remark = ''): string =>
  [`${name} · ${citations(sources).map(escaped).join('; ')}`, rows, remark].filter((part) => part !== '').join('\n\n');

/** Text kept as it is, with a fence that nothing in it can end. */
export function verbatim(text: string, language = ''): string {
  const longest = Math.max(2, ...(text.match(/`+/g) ?? []).map((run) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}${language}\n${text}\n${fence}`;
}
