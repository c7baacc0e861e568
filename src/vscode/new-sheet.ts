import * as vscode from 'vscode';
import { readSheet } from '../core';
import { notebookType } from './names';
import { notebookFrom } from './serializer';
import { type StarterSheet, starterSheet } from './starter-sheets';
import { tickOff } from './walkthrough';

/** Starter sheets by file name, put in place by the build from `seeds/`. */
declare const STARTER_SHEETS: Readonly<Record<string, string>>;

type Choice = vscode.QuickPickItem & StarterSheet;

const empty: Choice = {
  label: vscode.l10n.t('Empty sheet'),
  detail: vscode.l10n.t('One calculation cell and nothing else'),
  text: `# ${vscode.l10n.t('New sheet')}\n\n\`\`\`kft\n\n\`\`\`\n`,
};

/** Asks for a starter sheet and opens an untitled copy of it. `name` is a starter's file name and spares the question. */
export async function newSheet(name?: unknown): Promise<void> {
  const starters = Object.entries(STARTER_SHEETS).map(([file, text]) => ({ file, ...starterSheet(text) }));
  const named = starters.find(({ file }) => file === name);
  const title = vscode.l10n.t('New Sheet From…');
  const choice =
    named ?? (await vscode.window.showQuickPick<Choice>([...starters, empty], { title, matchOnDetail: true }));
  if (!choice) {
    return;
  }
  const data = notebookFrom(readSheet(new TextEncoder().encode(choice.text)), choice.text);
  for (const cell of data.cells) {
    cell.outputs = []; // The editor garbles the outputs of an untitled sheet; they follow when it is shown.
  }
  const notebook = await vscode.workspace.openNotebookDocument(notebookType, data);
  tickOff('sheetMade');
  await vscode.window.showNotebookDocument(notebook);
}
