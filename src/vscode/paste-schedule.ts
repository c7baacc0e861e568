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
  const { range, before, after } = lineOfItsOwn(editor.document, editor.selection);
  const edit = new vscode.WorkspaceEdit();
  edit.replace(editor.document.uri, range, `${before}${made.name} ${made.text}${after}`);
  const isPasted = await changeSheet(spot.sheet, () => vscode.workspace.applyEdit(edit));
  if (isPasted) {
    // The name is selected, for a better one to be typed.
    const at = before ? new vscode.Position(range.start.line + 1, 0) : range.start;
    editor.selection = new vscode.Selection(at, at.translate(0, made.name.length));
  }
  if (isPasted && made.notes.length > 0) {
    void vscode.window.showWarningMessage(made.notes.join(' '));
  }
}

/**
 * What a statement that is put in place of a selection replaces, and what parts it from the rest of its lines: it begins
 * a line of its own, at its very start, for an indented line belongs to the one above.
 */
export function lineOfItsOwn(
  document: vscode.TextDocument,
  { start, end }: vscode.Range,
): { readonly range: vscode.Range; readonly before: string; readonly after: string } {
  const isFirst = !/\S/.test(document.lineAt(start.line).text.slice(0, start.character));
  const isLast = !/\S/.test(document.lineAt(end.line).text.slice(end.character));
  const range = new vscode.Range(isFirst ? start.with({ character: 0 }) : start, end);
  return { range, before: isFirst ? '' : '\n', after: isLast ? '' : '\n' };
}
