export type * from './contract';
export { FilePositions, type PlacedDiagnostic } from './file-positions';
export { type ReadFrontMatter, readFrontMatter } from './front-matter';
export { type Heading, headingsOf } from './headings';
export { readSheet } from './read-sheet';
export { writeSheet } from './write-sheet';
