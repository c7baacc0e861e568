import * as vscode from 'vscode';
import type { EditedSheet } from './edited-sheet';
import { schemes } from './names';
import type { OpenSheets } from './open-sheets';

/**
 * The sheet that a person works on: the notebook in front, else the file that is open as text in front. Where neither
 * is in front but a page, such as the walkthrough or a chain, it is the sheet that can be seen beside it, or the only
 * one that is open.
 */
export function sheetInFront(sheets: OpenSheets): EditedSheet | undefined {
  const { activeNotebookEditor, activeTextEditor } = vscode.window;
  if (activeNotebookEditor) {
    return sheets.of(activeNotebookEditor.notebook);
  }
  return activeTextEditor && activeTextEditor.document.uri.scheme !== schemes.why
    ? sheets.withDocument(activeTextEditor.document)
    : onlySheet(sheets);
}

function onlySheet(sheets: OpenSheets): EditedSheet | undefined {
  const seen = vscode.window.visibleNotebookEditors.flatMap(({ notebook }) => sheets.of(notebook) ?? []);
  // A notebook whose tab was closed stays in memory for a while.
  const open = seen.length > 0 ? seen : [...sheets.all()].filter(({ uri }) => tabOf(uri) !== undefined);
  return open.length === 1 ? open[0] : undefined;
}

/** The group of tabs that a notebook is open in. */
export const tabOf = (uri: vscode.Uri): vscode.TabGroup | undefined =>
  vscode.window.tabGroups.all.find(({ tabs }) =>
    tabs.some(({ input }) => input instanceof vscode.TabInputNotebook && input.uri.toString() === uri.toString()),
  );

/** The cell that the cursor stands in, in the sheet in front. */
export function cellInFront(sheets: OpenSheets): { readonly sheet: EditedSheet; readonly cell: string } | undefined {
  const { activeNotebookEditor, activeTextEditor } = vscode.window;
  const sheet = sheetInFront(sheets);
  sheet?.update();
  if (sheet && activeNotebookEditor) {
    const at = activeNotebookEditor.selection.start;
    const { notebook } = activeNotebookEditor;
    const cell = at < notebook.cellCount ? sheet.cellsIn(notebook.cellAt(at).document)[0] : undefined;
    return cell && { sheet, cell: cell.id };
  }
  const position = activeTextEditor?.selection.active;
  const cell =
    position && sheet?.cellsIn(activeTextEditor.document).find((candidate) => candidate.offset(position) !== undefined);
  return sheet && cell && { sheet, cell: cell.id };
}
