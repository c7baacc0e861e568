export { withCarets } from './carets';
export { type ChangedStretch, changedStretch, withStretch } from './changed-stretch';
export { type Codes, codesOf } from './codes';
export type { Diagnostic, Fix, RelatedPlace, Severity } from './diagnostic';
export { applyEdits, type Edit } from './edit';
export { figure } from './figure';
export { type LineColumn, LineIndex } from './line-index';
export {
  codesOfLints,
  type LintId,
  type Problem,
  type ProblemCode,
  type ProblemExample,
  problemCalled,
  problemCodes,
  problemGroups,
} from './problems';
export { type Span, span } from './span';
export type { TableReference } from './table-reference';
export { hashFactor, WordTable } from './word-table';
