import * as vscode from 'vscode';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront, tabOf } from './sheet-in-front';

/** Brings the sheet that is worked on to the front at its first cell, where its title and its date are filled in. */
export async function showSheet(sheets: OpenSheets): Promise<void> {
  const sheet = sheetInFront(sheets);
  const editor = sheet && (await bringToFront(sheet));
  if (!editor) {
    await vscode.window.showInformationMessage(vscode.l10n.t('Open a sheet first, or make one with New Sheet From….'));
    return;
  }
  const top = new vscode.NotebookRange(0, 1);
  editor.selections = [top];
  editor.revealRange(top, vscode.NotebookEditorRevealType.AtTop);
  await vscode.commands.executeCommand('notebook.cell.edit');
}

/** Shows a notebook where it is open; undefined for a sheet that is open as text. */
export async function bringToFront({ uri }: EditedSheet): Promise<vscode.NotebookEditor | undefined> {
  const notebook = vscode.workspace.notebookDocuments.find((open) => open.uri.toString() === uri.toString());
  const group = tabOf(uri);
  return notebook && vscode.window.showNotebookDocument(notebook, { ...(group && { viewColumn: group.viewColumn }) });
}
