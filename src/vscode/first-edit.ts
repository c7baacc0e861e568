import * as vscode from 'vscode';
import { contexts, notebookType } from './names';

/** Says, once, that a cell of a sheet was edited: the walkthrough ticks off its step by that. */
export function tellFirstEdit(): vscode.Disposable {
  const watch = vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
    if (contentChanges.length > 0 && isCellOfSheet(document)) {
      watch.dispose();
      void vscode.commands.executeCommand('setContext', contexts.sheetEdited, true);
    }
  });
  return watch;
}

const isCellOfSheet = (document: vscode.TextDocument): boolean =>
  vscode.workspace.notebookDocuments.some(
    (notebook) =>
      notebook.notebookType === notebookType && notebook.getCells().some((cell) => cell.document === document),
  );
