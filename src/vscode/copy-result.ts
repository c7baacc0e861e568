import * as vscode from 'vscode';
import { type CopyForm, copied, copyForms } from '../core';
import type { EditedSheet } from './edited-sheet';
import { cellId, type OpenSheets } from './open-sheets';
import { cellInFront } from './sheet-in-front';
import type { Entry } from './values-view';

interface Source {
  readonly sheet: EditedSheet;
  readonly cell: string;
  /** The one statement to copy; absent for the whole cell. */
  readonly index?: number;
}

/** Copies what a cell comes to, or one value of it, in a form that a person picks. Gives back what was copied. */
export async function copyResult(
  sheets: OpenSheets,
  target?: Entry | vscode.NotebookCell,
  given?: CopyForm,
): Promise<string | undefined> {
  const source = sourceOf(sheets, target);
  source?.sheet.update();
  const results = source?.sheet.session.results(source.cell) ?? [];
  const wanted = results.filter(({ index }) => source?.index === undefined || source.index === index);
  if (wanted.length === 0) {
    await vscode.window.showInformationMessage(
      vscode.l10n.t('Put the cursor into a calculation cell with results to copy them.'),
    );
    return undefined;
  }
  const form = typeof given === 'string' ? given : await pickForm();
  if (!form) {
    return undefined;
  }
  const text = copied(wanted, form);
  await vscode.env.clipboard.writeText(text);
  vscode.window.setStatusBarMessage(vscode.l10n.t('Result copied as {0}', vscode.l10n.t(copyForms[form].label)), 3000);
  return text;
}

function sourceOf(sheets: OpenSheets, target: Entry | vscode.NotebookCell | undefined): Source | undefined {
  if (target && 'notebook' in target) {
    const sheet = sheets.of(target.notebook);
    return sheet && { sheet, cell: cellId(target) };
  }
  switch (target && 'kind' in target ? target.kind : undefined) {
    case 'value': {
      const { sheet, value } = target as Entry & { kind: 'value' };
      return { sheet, cell: value.cell, index: value.index };
    }
    case 'check': {
      const { sheet, check } = target as Entry & { kind: 'check' };
      return { sheet, cell: check.cell, index: check.index };
    }
    default:
      return cellInFront(sheets);
  }
}

async function pickForm(): Promise<CopyForm | undefined> {
  const picks = (Object.keys(copyForms) as CopyForm[]).map((form) => ({
    form,
    label: vscode.l10n.t(copyForms[form].label),
    description: vscode.l10n.t(copyForms[form].use),
  }));
  return (await vscode.window.showQuickPick(picks, { title: vscode.l10n.t('Copy Result As') }))?.form;
}
