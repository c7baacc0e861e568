import * as vscode from 'vscode';
import { inputEdit, type SheetInput, sheetInputs } from '../core';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import type { Entry } from './values-view';
import { changeSheet } from './write-protection';

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
    await vscode.window.showInformationMessage(
      vscode.l10n.t('Open a sheet first: its inputs are changed in what is in front.'),
    );
  } else if (sheetInputs(sheet.session).length === 0) {
    await vscode.window.showInformationMessage(
      vscode.l10n.t(
        'This sheet has no input. A line such as `input run = 85 ft from 5 ft to 400 ft "one-way length"` in a calculation cell makes one.',
      ),
    );
  } else if (given) {
    await put(sheet, given.name, given.value);
  } else if (entry) {
    await ask(sheet, entry.value.name);
  } else {
    await askOneByOne(sheet);
  }
}

/** Back to the list after each, since one input seldom changes alone; the results follow behind it. Escape ends it. */
async function askOneByOne(sheet: EditedSheet): Promise<void> {
  let name: string | undefined;
  do {
    sheet.update();
    name = await pickInput(sheetInputs(sheet.session), name);
  } while (name !== undefined && ((await ask(sheet, name)) || sheetInputs(sheet.session).length > 1));
}

/** The list begins at the input behind the one that was changed last. */
async function pickInput(inputs: readonly SheetInput[], last: string | undefined): Promise<string | undefined> {
  const next = inputs.findIndex(({ name }) => name === last) + 1;
  const ordered = [...inputs.slice(next), ...inputs.slice(0, next)];
  const picks = ordered.map((input) => ({
    label: input.name,
    description: input.written,
    detail: meaningOf(input),
  }));
  const picked = await vscode.window.showQuickPick(picks, {
    title: vscode.l10n.t('Change an Input'),
    matchOnDetail: true,
    placeHolder: vscode.l10n.t('Which one? Escape when done.'),
  });
  return picked?.label;
}

/** What it means and between what it may lie. */
function meaningOf({ label, bounds }: SheetInput): string | undefined {
  const parts = [label, bounds && vscode.l10n.t('from {0} to {1}', bounds.low, bounds.high)];
  return parts.filter(Boolean).join(', ') || undefined;
}

/** True when a value was put in place. */
async function ask(sheet: EditedSheet, name: string): Promise<boolean> {
  const input = sheetInputs(sheet.session).find((candidate) => candidate.name === name);
  if (!input) {
    return false;
  }
  const hint = input.unit
    ? vscode.l10n.t('A number alone is in {0}.', input.unit)
    : vscode.l10n.t('It is written as in a cell.');
  const meaning = meaningOf(input);
  // The number is selected, so that a new one takes its place and the unit and the meter stay.
  const [number] = /^[+-]?\d[\d.]*(?:e[+-]?\d+)?/i.exec(input.written) ?? [input.written];
  const value = await vscode.window.showInputBox({
    title: vscode.l10n.t('New value of {0}', name),
    prompt: meaning ? `${meaning}. ${hint}` : hint,
    value: input.written,
    valueSelection: [0, number.length],
    validateInput: (typed) => {
      const made = inputEdit(sheet.session, name, typed);
      return 'problem' in made ? made.problem : undefined;
    },
  });
  return value !== undefined && (await put(sheet, name, value));
}

/** The sheet may have been typed in while the question stood, so the place is looked up again. */
async function put(sheet: EditedSheet, name: string, value: string): Promise<boolean> {
  sheet.update();
  const made = inputEdit(sheet.session, name, value);
  const cell = 'cell' in made ? sheet.placed(made.cell) : undefined;
  if ('problem' in made || !cell) {
    await vscode.window.showErrorMessage(
      'problem' in made ? made.problem : vscode.l10n.t('The cell of `{0}` is no more.', name),
    );
    return false;
  }
  const edit = new vscode.WorkspaceEdit();
  edit.set(cell.document.uri, cell.textEdits([made.edit]));
  return changeSheet(sheet, () => vscode.workspace.applyEdit(edit));
}
