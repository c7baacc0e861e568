import * as vscode from 'vscode';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';

/** The sheet that a person works on: the notebook in front, else the file that is open as text in front. */
export function sheetInFront(sheets: OpenSheets): EditedSheet | undefined {
  const { activeNotebookEditor, activeTextEditor } = vscode.window;
  return activeNotebookEditor
    ? sheets.of(activeNotebookEditor.notebook)
    : activeTextEditor && sheets.withDocument(activeTextEditor.document);
}

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
