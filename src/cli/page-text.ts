import type { Colors } from 'picocolors/types';

/** A reference page in Markdown as a terminal shows it: columns under one another, no marks and no escapes. */
export function pageText(page: string, colours: Colors): string {
  const lines: string[] = [];
  let table: string[][] = [];
  const endTable = () => {
    lines.push(...tableLines(table, colours));
    table = [];
  };
  let fence = ''; // The marks that opened it; only so many close it, so that a sheet's own fences can stand inside.
  for (const line of page.split('\n')) {
    const marks = /^`{3,}/.exec(line)?.[0] ?? '';
    if (fence ? line.trim() === fence : marks !== '') {
      fence = fence ? '' : marks;
      continue;
    }
    if (fence === '' && /^\|.*\|$/.test(line)) {
      table.push(cellsOf(line));
      continue;
    }
    endTable();
    lines.push(fence ? `    ${line}` : plainLine(line, colours));
  }
  endTable();
  return lines.join('\n');
}

/** A row's cells; a bar behind a backslash is part of its cell. */
const cellsOf = (row: string): string[] =>
  row
    .slice(1, -1)
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim());

function tableLines(rows: readonly (readonly string[])[], colours: Colors): string[] {
  const shown = rows.filter((_, i) => i !== 1).map((row) => row.map(unmarked));
  const widths = (shown[0] ?? []).map((_, column) => Math.max(...shown.map((row) => (row[column] ?? '').length)));
  return shown.map((row, i) => {
    const line = `  ${row.map((cell, column) => cell.padEnd(widths[column])).join('  ')}`.trimEnd();
    return i === 0 ? colours.bold(line) : line;
  });
}

function plainLine(line: string, colours: Colors): string {
  const heading = /^#{1,6} (.*)/.exec(line);
  return heading ? colours.bold(unmarked(heading[1])) : unmarked(line);
}

/** Without emphasis, code marks and the backslashes that keep signs from being marks. */
const unmarked = (text: string): string =>
  text
    .replace(/\*\*(.+?)\*\*/g, '$1')
    .replace(/`([^`]*)`/g, '$1')
    .replace(/\\([!-/:-@[-`{-~])/g, '$1');
