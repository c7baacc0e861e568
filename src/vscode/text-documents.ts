import * as vscode from 'vscode';
import type { SheetDiagnostics } from './diagnostics';
import { settings } from './names';
import { isTextSheet, type OpenSheets } from './open-sheets';
import type { WorkspaceTables } from './workspace-tables';

/** A sheet as text is read again when nothing was typed for so long. */
const pause = 100;

/** Keeps problems in step with what is typed in sheets that are shown as text. */
export function followTexts(
  sheets: OpenSheets,
  diagnostics: SheetDiagnostics,
  tables: WorkspaceTables,
): vscode.Disposable[] {
  const { workspace } = vscode;
  const due = new Map<vscode.TextDocument, ReturnType<typeof setTimeout>>();
  const show = (document: vscode.TextDocument) => {
    due.delete(document);
    const sheet = sheets.ofText(document);
    if (sheet) {
      sheet.update();
      diagnostics.publishText(sheet);
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
    workspace.onDidChangeTextDocument(({ document }) => soon(document)),
    workspace.onDidCloseTextDocument((document) => {
      clearTimeout(due.get(document));
      sheets.forgetText(document);
      if (isTextSheet(document)) {
        diagnostics.forgetText(document);
      }
    }),
    workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration(settings.section)) {
        all();
      }
    }),
    tables.onDidRead(all),
  ];
}
