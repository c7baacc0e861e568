export { completionsAt } from './completion';
export type { Completion, CompletionKind, EditedSheet, Hover, Place } from './contract';
export { definitionAt, referencesAt } from './definition';
export { hoverAt } from './hover';
