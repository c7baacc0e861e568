export type * from './contract';
export { createTables } from './create-tables';
export { canonicalEdition, defaultEdition, editionsAvailable } from './edition';
export { knownSizes } from './known-sizes';
export { listTables, type TableInfo } from './list-tables';
export { readTableFile } from './read-table-file';
export { compareSizes, nearestSizes, parseSize } from './size';
export { type TableFile, tableFileEnding } from './table-file';
export { type ValuesFromMemory, valuesFromMemory } from './values-from-memory';
