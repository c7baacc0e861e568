import type { DataTable } from './document';

/** A table's column headings with their units: `load (A)`. */
export const headings = ({ columns }: DataTable): string[] =>
  columns.map(({ title, unit }) => (unit === undefined ? title : `${title} (${unit})`));
