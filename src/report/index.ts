export { buildReport } from './build-report';
export type * from './document';
export type * from './input';
export { fontFiles } from './pdf/pdf-writer';
export type { WriteOptions } from './write-options';
export { type ReportFormat, reportFormats, writeReport } from './write-report';
