import * as vscode from 'vscode';
import { pastedSchedule } from '../core';
import type { OpenSheets } from './open-sheets';
import { changeSheet } from './write-protection';

/**
 * Puts cells of a spreadsheet, as the clipboard holds them, into the calculation cell under the cursor as a schedule.
 * `given` stands in for the clipboard.
 */
export async function pasteAsSchedule(sheets: OpenSheets, given?: string): Promise<void> {
  const { activeTextEditor: editor } = vscode.window;
  const spot = editor && sheets.spot(editor.document, editor.selection.active);
  if (!editor || !spot) {
    await vscode.window.showInformationMessage(
      vscode.l10n.t('Put the cursor into a calculation cell; the schedule is pasted there.'),
    );
    return;
  }
  const made = pastedSchedule(spot.session, typeof given === 'string' ? given : await vscode.env.clipboard.readText());
  if ('problem' in made) {
    await vscode.window.showInformationMessage(made.problem);
    return;
  }
  // A statement begins a line of its own; the name is selected, for a better one to be typed.
  const { start, end } = editor.selection;
  const before = /\S/.test(editor.document.lineAt(start.line).text.slice(0, start.character)) ? '\n' : '';
  const after = /\S/.test(editor.document.lineAt(end.line).text.slice(end.character)) ? '\n' : '';
  const edit = new vscode.WorkspaceEdit();
  edit.replace(editor.document.uri, editor.selection, `${before}${made.name} ${made.text}${after}`);
  const isPasted = await changeSheet(spot.sheet, () => vscode.workspace.applyEdit(edit));
  if (isPasted) {
    const at = before ? new vscode.Position(start.line + 1, 0) : start;
    editor.selection = new vscode.Selection(at, at.translate(0, made.name.length));
  }
  if (isPasted && made.notes.length > 0) {
    void vscode.window.showWarningMessage(made.notes.join(' '));
  }
}
