import * as vscode from 'vscode';
import { isTextSheet } from './is-text-sheet';
import { settings } from './names';
import type { OpenSheets } from './open-sheets';
import type { TextSheet } from './text-sheet';
import type { WorkspaceFiles } from './workspace-files';
import type { WorkspaceTables } from './workspace-tables';

/** A sheet as text is read again when nothing was typed for so long. */
const pause = 100;

/** Evaluates sheets that are shown as text as they are opened and typed in, and tells of each. */
export function followTexts(
  sheets: OpenSheets,
  tables: WorkspaceTables,
  files: WorkspaceFiles,
  evaluated: (sheet: TextSheet) => void,
  closed: (document: vscode.TextDocument) => void,
): vscode.Disposable[] {
  const { workspace } = vscode;
  const due = new Map<vscode.TextDocument, ReturnType<typeof setTimeout>>();
  const show = (document: vscode.TextDocument) => {
    due.delete(document);
    const sheet = sheets.ofText(document);
    sheet?.update();
    if (sheet && !sheet.isWaiting) {
      evaluated(sheet);
    }
  };
  const soon = (document: vscode.TextDocument, wait = pause) => {
    // The older side of a comparison shows what was, and nobody can mend it.
    if (isTextSheet(document) && workspace.fs.isWritableFileSystem(document.uri.scheme) !== false) {
      clearTimeout(due.get(document));
      due.set(
        document,
        setTimeout(() => show(document), wait),
      );
    }
  };
  const all = () => {
    for (const { document } of sheets.allTexts()) {
      soon(document);
    }
  };
  for (const document of workspace.textDocuments) {
    soon(document, 0);
  }
  return [
    workspace.onDidOpenTextDocument((document) => soon(document, 0)),
    workspace.onDidChangeTextDocument(({ document }) => {
      files.touched(document.uri);
      soon(document);
    }),
    workspace.onDidCloseTextDocument((document) => {
      clearTimeout(due.get(document));
      files.touched(document.uri);
      sheets.forgetText(document);
      if (isTextSheet(document)) {
        closed(document);
      }
    }),
    workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration(settings.section)) {
        all();
      }
    }),
    tables.onDidRead(all),
    files.onDidRead(all),
  ];
}
