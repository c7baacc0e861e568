/** The one door for hosts: all that a command line or an editor needs of a sheet. Nothing here reads or writes files. */
export * from './editor';
export { nearest, type Program, type StatementResult, type Value, type Verdict } from './language';
export { rules } from './lints';
export {
  type CellOrigin,
  type FileOrigin,
  FilePositions,
  type FrontMatter,
  headingsOf,
  type PlacedDiagnostic,
  readSheet,
  type SheetCell,
  type SheetFile,
  writeSheet,
} from './notebook';
export {
  buildReport,
  type Change,
  compareReports,
  isSame,
  type ReportDocument,
  type ReportFormat,
  type ReportInput,
  type ReportProgress,
  reportFormats,
  type SheetComparison,
  type WriteOptions,
  writeReport,
} from './report';
export * from './session';
export { listTables, readTableFile, type TableFile, type TableInfo, tableFileEnding } from './tables';
export { fromBase, namedUnits, parseUnit, type Unit } from './units';
