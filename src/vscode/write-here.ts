import * as vscode from 'vscode';
import { type ReportDocument, type ReportFormat, type ReportProgress, writeReport } from '../core';

/** Writes a report in the host itself, where it has no threads: the formats that are made there take a second or two. */
export async function writeApart(
  document: ReportDocument,
  format: ReportFormat,
  extension: vscode.Uri,
  progress: ReportProgress,
  stop: vscode.CancellationToken,
): Promise<Uint8Array | undefined> {
  const font = async (name: string) =>
    vscode.workspace.fs.readFile(vscode.Uri.joinPath(extension, 'dist', 'fonts', name));
  const bytes = await writeReport(document, format, { font, progress });
  return stop.isCancellationRequested ? undefined : bytes;
}
