import { writeCsv } from './csv-writer';
import type { ReportDocument } from './document';
import { writeDocx } from './docx/docx-writer';
import { writeHtml } from './html-writer';
import { writeMarkdown } from './markdown-writer';
import { writePdf } from './pdf/pdf-writer';
import type { WriteOptions } from './write-options';
import { writeXlsx } from './xlsx-writer';

/** The formats a report is written in, with what a file dialog calls them. */
export const reportFormats = {
  pdf: { label: 'PDF', binary: true },
  docx: { label: 'Word processor document', binary: true },
  html: { label: 'Web page', binary: false },
  md: { label: 'Markdown', binary: false },
  xlsx: { label: 'Spreadsheet workbook', binary: true },
  csv: { label: 'Comma-separated values', binary: false },
} as const;
export type ReportFormat = keyof typeof reportFormats;

type Writer = (document: ReportDocument, options: WriteOptions) => string | Uint8Array | Promise<string | Uint8Array>;

/** The libraries that a writer needs are loaded when it is first used. */
const writers: Readonly<Record<ReportFormat, Writer>> = {
  pdf: writePdf,
  docx: writeDocx,
  html: writeHtml,
  md: writeMarkdown,
  xlsx: writeXlsx,
  csv: writeCsv,
};

/** A report as the bytes of a file: the same document gives the same bytes. */
export async function writeReport(
  document: ReportDocument,
  format: ReportFormat,
  options: WriteOptions,
): Promise<Uint8Array> {
  const written = await writers[format](document, options);
  return typeof written === 'string' ? new TextEncoder().encode(written) : written;
}
