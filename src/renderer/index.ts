export { liveExpression } from './live-prose';
export type { LiveMetadata } from './markdown-engine';
