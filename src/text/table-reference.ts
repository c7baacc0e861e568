/** Names a table so that another person finds it. */
export interface TableReference {
  /** `NEC (NFPA 70)` */
  readonly standard: string;
  /** `2023` */
  readonly edition: string;
  /** `Table 310.16` */
  readonly table: string;
  /** `published` when seen in a public reproduction, `memory` when not. */
  readonly basis: 'published' | 'memory';
  /** The publication the row was checked against. */
  readonly provenance: string;
  /** Set when a workspace's own file replaced or added the table: its path. */
  readonly file?: string;
}
