import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import * as vscode from 'vscode';
import type { ReportDocument, ReportFormat, ReportProgress } from '../core';

/** What the thread is started with: plain data, and the folder of the fonts. */
export interface ToWorker {
  readonly document: ReportDocument;
  readonly format: ReportFormat;
  readonly fonts: string;
}

export type ToEditor = { readonly step: Parameters<ReportProgress>[0] } | { readonly bytes: Uint8Array };

/**
 * Writes a report in a thread of its own, so that the editor answers meanwhile, and the libraries and the memory that it
 * takes are gone afterwards. Undefined when it was stopped. A host without threads gets `write-here.ts` in its place.
 */
export function writeApart(
  document: ReportDocument,
  format: ReportFormat,
  extension: vscode.Uri,
  progress: ReportProgress,
  stop: vscode.CancellationToken,
): Promise<Uint8Array | undefined> {
  const { fsPath } = extension;
  const workerData: ToWorker = { document, format, fonts: join(fsPath, 'dist', 'fonts') };
  const worker = new Worker(join(fsPath, 'dist', 'report-worker.js'), { workerData });
  return new Promise((resolve, reject) => {
    worker.on('message', (message: ToEditor) => ('step' in message ? progress(message.step) : resolve(message.bytes)));
    worker.on('error', reject);
    worker.on('exit', () =>
      reject(new Error(vscode.l10n.t('its writer ended before it was done; there may be too little memory for it.'))),
    ); // Nothing, once resolved.
    stop.onCancellationRequested(() => {
      resolve(undefined);
      void worker.terminate();
    });
  });
}
