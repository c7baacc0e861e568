export type * from './contract';
export { FilePositions } from './file-positions';
export { readFrontMatter } from './front-matter';
export { readSheet } from './read-sheet';
export { writeSheet } from './write-sheet';
