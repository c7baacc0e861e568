export { buildReport } from './build-report';
export { type Change, compareReports, type FindingChange, isSame, type SheetComparison } from './compare-reports';
export type * from './document';
export type * from './input';
export { fontFiles } from './pdf/pdf-writer';
export type { PictureFiles } from './picture';
export { pictureSources } from './prose';
export type { ReportProgress, WriteOptions } from './write-options';
export { type ReportFormat, reportFormats, writeReport } from './write-report';
