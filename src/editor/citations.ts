import { citation } from '../display';
import type { TableReference } from '../text';

/** Each source once, in the order they were used; says so where nobody compared the value with a publication. */
export const citations = (sources: readonly TableReference[]): string[] => [
  ...new Set(sources.map((source) => `${citation(source)}${source.basis === 'memory' ? ' (from memory)' : ''}`)),
];
