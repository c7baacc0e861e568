export { type LiveMetadata, liveExpression } from './live-prose';
