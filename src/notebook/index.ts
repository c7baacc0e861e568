export type * from './contract';
export { reportShapes } from './contract';
export { FilePositions, type PlacedDiagnostic } from './file-positions';
export { noFrontMatter, type ReadFrontMatter, readFrontMatter } from './front-matter';
export { type Heading, headingsOf } from './headings';
export { liveSpans } from './live-prose';
export { readSheet } from './read-sheet';
export type { SeverityLine } from './severities';
export { writeSheet } from './write-sheet';
