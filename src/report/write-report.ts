import { writeCsv } from './csv-writer';
import type { ReportDocument } from './document';
import { writeHtml } from './html-writer';
import { writeMarkdown } from './markdown-writer';

/** The formats a report is written in, with what a file dialog calls them. */
export const reportFormats = {
  md: { label: 'Markdown', binary: false },
  html: { label: 'Web page', binary: false },
  csv: { label: 'Comma-separated values', binary: false },
} as const;
export type ReportFormat = keyof typeof reportFormats;

type Writer = (document: ReportDocument) => string | Uint8Array | Promise<string | Uint8Array>;

/** The libraries that a writer needs are loaded when it is first used. */
const writers: Readonly<Record<ReportFormat, Writer>> = { md: writeMarkdown, html: writeHtml, csv: writeCsv };

/** A report as the bytes of a file: the same document gives the same bytes. */
export async function writeReport(document: ReportDocument, format: ReportFormat): Promise<Uint8Array> {
  const written = await writers[format](document);
  return typeof written === 'string' ? new TextEncoder().encode(written) : written;
}
