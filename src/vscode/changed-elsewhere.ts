import * as vscode from 'vscode';
import type { FileChanges } from './file-changes';
import { notebookType } from './names';
import { isOurs } from './serializer';

/**
 * Says of a sheet with unsaved changes that another program changed its file. The editor refuses to save over such a
 * file only where its length is another, and a digit that was changed leaves the length.
 */
export function tellOfChanged(changes: FileChanges): vscode.Disposable {
  return changes.onDidChange((file) => void tell(file));
}

async function tell(file: vscode.Uri): Promise<void> {
  if (!unsaved(file)) {
    return;
  }
  const bytes = await vscode.workspace.fs.readFile(file).then(
    (found) => found,
    () => undefined, // It is gone, which is told elsewhere.
  );
  if (!bytes || isOurs(bytes) || !unsaved(file)) {
    return;
  }
  const saveAs = vscode.l10n.t('Save As…');
  const message = vscode.l10n.t(
    '{0} was changed by another program, and here are changes of yours that are not saved. Saving them may replace the other text: save yours under another name, or revert the file to see the other.',
    file.path.split('/').at(-1) ?? file.path,
  );
  const isChosen = (await vscode.window.showWarningMessage(message, saveAs)) === saveAs;
  const notebook = unsaved(file);
  if (isChosen && notebook) {
    if (vscode.window.activeNotebookEditor?.notebook !== notebook) {
      await vscode.window.showNotebookDocument(notebook);
    }
    await vscode.commands.executeCommand('workbench.action.files.saveAs');
  }
}

const unsaved = (file: vscode.Uri): vscode.NotebookDocument | undefined =>
  vscode.workspace.notebookDocuments.find(
    ({ uri, isDirty, notebookType: type }) => isDirty && type === notebookType && uri.toString() === file.toString(),
  );
