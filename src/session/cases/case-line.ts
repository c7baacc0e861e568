import type { CaseOutcome, SheetCases } from './sheet-cases';

/** The heading of the rows that `caseLine` writes. */
export const caseHeading = ({ header }: SheetCases): string => csvLine([...header, 'problems']);

/** A case as a line of comma-separated values: its inputs, its results, and what is wrong with it. */
export const caseLine = ({ cells, problems }: CaseOutcome): string => csvLine([...cells, problems.join(' ')]);

const csvLine = (cells: readonly (string | number)[]): string => `${cells.map(quoted).join(',')}\n`;

const quoted = (cell: string | number): string | number =>
  typeof cell === 'string' && /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
