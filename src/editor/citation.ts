import type { TableReference } from '../text';

/** `NEC (NFPA 70) 2023, Table 310.16`; says so where nobody compared the value with a publication. */
export function citation({ standard, edition, table, basis, file }: TableReference): string {
  const where = file ? `, from ${file}` : '';
  return `${standard} ${edition}, ${table}${where}${basis === 'memory' ? ' (from memory)' : ''}`;
}

/** Each source once, in the order they were used. */
export const citations = (sources: readonly TableReference[]): string[] => [...new Set(sources.map(citation))];
