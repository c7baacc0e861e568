/**
 * One table as it stands in a JSON file, shipped with the extension or brought by a workspace. Cells are text, because a
 * printed `0.100` says more than the number does; an empty cell is null.
 */
export interface TableFile {
  /** Which table of the core it fills: `ampacity`. */
  readonly subject: string;
  /** `NEC (NFPA 70)`; what stands before the bracket, with an edition, is what a sheet names: `NEC 2023`. */
  readonly standard: string;
  /** Every edition that the rows hold for. */
  readonly editions: readonly string[];
  /** For a new edition: the edition whose tables hold wherever this one brings none, `NEC 2023`. */
  readonly base?: string;
  /** True for a table that belongs to no electrical code and so holds beside any edition. */
  readonly anyCode?: boolean;
  /** Number of the table; where it moved, by the edition from which the number holds. */
  readonly table: string | Readonly<Record<string, string>>;
  readonly title: string;
  /** What the values presuppose, such as the temperature. */
  readonly conditions: readonly string[];
  readonly provenance: string;
  readonly basis: Basis;
  /** Where single rows come from elsewhere: named in the row's `source` cell. */
  readonly otherSources?: Readonly<Record<string, { readonly provenance: string; readonly basis: Basis }>>;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | null)[])[];
  /** The workspace file's own path; shipped files have none. */
  readonly path?: string;
}

/** A file so named, in a sheet's own folder, is a table of the workspace and holds for the sheets there. */
export const tableFileEnding = '.kft-table.json';

export type Basis = 'published' | 'memory';

/** `NEC (NFPA 70)` and `2023` make `NEC 2023`. */
export const editionLabel = (standard: string, edition: string): string =>
  `${standard.replace(/\s*\(.*\)$/, '')} ${edition}`;

/** `Table 310.16`: the number that the table carries in an edition. */
export function tableNumber(file: TableFile, edition: string): string {
  if (typeof file.table === 'string') {
    return file.table;
  }
  const since = Object.keys(file.table).sort();
  const at = since.filter((from) => from <= edition).at(-1) ?? since[0];
  return file.table[at];
}
