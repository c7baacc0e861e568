import * as vscode from 'vscode';
import { inputEdit, type SheetInput, sheetInputs } from '../core';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import type { Entry } from './values-view';

/** What a test or a keybinding may hand the command, to be asked nothing. */
interface Given {
  readonly name: string;
  readonly value: string;
}

/** Asks for one of a sheet's inputs and its new value, and puts that in the place of the old one: one edit, one undo. */
export async function changeInput(sheets: OpenSheets, target?: Entry | Given): Promise<void> {
  const entry = target && 'kind' in target && target.kind === 'value' ? target : undefined;
  const given = target && 'value' in target && typeof target.value === 'string' ? (target as Given) : undefined;
  const sheet = entry?.sheet ?? sheetInFront(sheets);
  sheet?.update();
  if (!sheet?.editable) {
    await vscode.window.showInformationMessage('Open a sheet first: its inputs are changed in what is in front.');
    return;
  }
  const inputs = sheetInputs(sheet.session);
  if (inputs.length === 0) {
    const line = 'input run = 85 ft from 5 ft to 400 ft "one-way length"';
    await vscode.window.showInformationMessage(`This sheet has no input. A line such as \`${line}\` makes one.`);
    return;
  }
  const name = given?.name ?? entry?.value.name ?? (await pickInput(inputs));
  const input = inputs.find((candidate) => candidate.name === name);
  const value = input && (given?.value ?? (await askValue(sheet, input)));
  if (name !== undefined && value !== undefined) {
    await put(sheet, name, value);
  }
}

async function pickInput(inputs: readonly SheetInput[]): Promise<string | undefined> {
  const picks = inputs.map((input) => ({ label: input.name, description: input.written, detail: meaningOf(input) }));
  const title = 'Change an Input';
  return (await vscode.window.showQuickPick(picks, { title, matchOnDetail: true, placeHolder: 'Input' }))?.label;
}

/** What it means and between what it may lie. */
function meaningOf({ label, bounds }: SheetInput): string | undefined {
  const parts = [label, bounds && `from ${bounds.low} to ${bounds.high}`];
  return parts.filter(Boolean).join(', ') || undefined;
}

async function askValue(sheet: EditedSheet, input: SheetInput): Promise<string | undefined> {
  return vscode.window.showInputBox({
    title: input.name,
    prompt: meaningOf(input) ?? 'Written as in a cell; a bare number takes the unit that stands there.',
    value: input.written,
    validateInput: (value) => {
      const made = inputEdit(sheet.session, input.name, value);
      return 'problem' in made ? made.problem : undefined;
    },
  });
}

/** The sheet may have been typed in while the question stood, so the place is looked up again. */
async function put(sheet: EditedSheet, name: string, value: string): Promise<void> {
  sheet.update();
  const made = inputEdit(sheet.session, name, value);
  const cell = 'cell' in made ? sheet.placed(made.cell) : undefined;
  if ('problem' in made || !cell) {
    await vscode.window.showErrorMessage('problem' in made ? made.problem : `The cell of \`${name}\` is no more.`);
    return;
  }
  const edit = new vscode.WorkspaceEdit();
  edit.set(cell.document.uri, cell.textEdits([made.edit]));
  await vscode.workspace.applyEdit(edit);
}
