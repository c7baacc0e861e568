import type { TableReference } from '../text';

/** `NEC (NFPA 70) 2023, Table 310.16`; a workspace's own file is named. */
export const citation = ({ standard, edition, table, file }: TableReference): string =>
  `${standard} ${edition}, ${table}${file === undefined ? '' : `, from ${file}`}`;
