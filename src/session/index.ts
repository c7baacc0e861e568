export { caseHeading, caseLine } from './cases/case-line';
export { InputReader, type ReadInput } from './cases/input-reader';
export { type CaseOutcome, casesAtOnce, SheetCases } from './cases/sheet-cases';
export {
  type CheckOutcome,
  type EvaluatedCell,
  evaluateSheet,
  type PlacedAllowance,
  type SheetEvaluation,
} from './evaluate-sheet';
export { type Evidence, evidenceOf } from './evidence';
export { type Explanation, explain, explainable } from './explain';
export { type FolderFiles, folderOf, pathInTree, wayInTree } from './folder-files';
export { formatSheet } from './format-sheet';
export { type LiveValue, liveParagraphs } from './live-prose';
export { namedValuesIn } from './named-values';
export { problemPage } from './problem-page';
export { readRows } from './read-rows';
export { reportInput } from './report-input';
export { type SavedEdit, savedEdits, writeResults } from './saved-results';
export type { SessionCell } from './session-cells';
export { type InputsSet, setInputs } from './set-inputs';
export { inputEdit, type SheetInput, sheetInputs } from './sheet-inputs';
export { SheetSession } from './sheet-session';
