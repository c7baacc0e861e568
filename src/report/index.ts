export { buildReport } from './build-report';
export type * from './document';
export type * from './input';
export { type ReportFormat, reportFormats, writeReport } from './write-report';
