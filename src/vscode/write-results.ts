import * as vscode from 'vscode';
import { savedEdits } from '../core';
import type { OpenSheets } from './open-sheets';
import { changeSheet } from './write-protection';

/** Writes the results of the sheet in front into its prose, in a block behind each cell; saving is left to the person. */
export async function writeResultsIntoSheet(sheets: OpenSheets): Promise<void> {
  const notebook = vscode.window.activeNotebookEditor?.notebook;
  const sheet = notebook && sheets.of(notebook);
  if (!notebook || !sheet?.editable) {
    await vscode.window.showInformationMessage(vscode.l10n.t('Open a sheet first: its results are written into it.'));
    return;
  }
  sheet.update();
  if (sheet.session.newerFormat) {
    await vscode.window.showWarningMessage(sheet.session.newerFormat.message);
    return;
  }
  const cells = sheet.cells();
  const edits = savedEdits(cells, (index) => sheet.session.outputs(cells[index].id));
  if (edits.length === 0) {
    return; // They stand there as they are.
  }
  const edit = new vscode.WorkspaceEdit();
  const inserted: vscode.NotebookEdit[] = [];
  for (const { cell, prose, isNew } of edits) {
    if (isNew) {
      const made = new vscode.NotebookCellData(vscode.NotebookCellKind.Markup, prose, 'markdown');
      inserted.push(vscode.NotebookEdit.insertCells(cell + 1, [made]));
    } else {
      const { document } = notebook.cellAt(cell + 1);
      edit.replace(document.uri, new vscode.Range(0, 0, document.lineCount, 0), prose);
    }
  }
  // From the last on, so that what is put in first moves none of the others.
  edit.set(notebook.uri, inserted.reverse());
  await changeSheet(sheet, () => vscode.workspace.applyEdit(edit));
}
