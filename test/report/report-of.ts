import { readFont } from '../../src/cli/fonts';
import {
  buildReport,
  evaluateSheet,
  type ReportDocument,
  type ReportFormat,
  reportInput,
  writeReport,
} from '../../src/core';

/** A sheet's report, from its text. */
export const reportOf = (text: string): ReportDocument => buildReport(reportInput(evaluateSheet(text)));

/** A sheet's report as the bytes of a file. */
export const bytesOf = (text: string, format: ReportFormat): Promise<Uint8Array> =>
  writeReport(reportOf(text), format, { font: readFont });

/** A sheet with front matter lines, prose and one cell. */
export const sheetOf = (front: string, cell: string, prose = '', after = ''): string =>
  `---\n${front}\n---\n\n${prose}\n\n\`\`\`kft\n${cell}\n\`\`\`\n\n${after}\n`;

export const section = (document: ReportDocument, title: string) =>
  document.sections.find((candidate) => candidate.title === title);

/** All that a part of a report says, as one string: for asking whether something is told. */
export const saying = (parts: unknown): string =>
  JSON.stringify(parts, (key, value) => (key === 'latex' ? undefined : value));
