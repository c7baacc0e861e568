import * as vscode from 'vscode';
import { commands } from './names';
import { isCalculation, type OpenSheets } from './open-sheets';

/** Advice about work that can hurt someone: once a sheet, under its first calculation cell, and on a command. */
export class Cautions implements vscode.NotebookCellStatusBarItemProvider {
  constructor(
    private readonly sheets: OpenSheets,
    readonly onDidChangeCellStatusBarItems: vscode.Event<void>,
  ) {}

  provideCellStatusBarItems(cell: vscode.NotebookCell): vscode.NotebookCellStatusBarItem[] {
    if (cell !== cell.notebook.getCells().find(isCalculation)) {
      return [];
    }
    const texts = this.textsFor(cell.notebook);
    if (texts.length === 0 || this.sheets.of(cell.notebook)?.session.cautionsAcknowledged) {
      return [];
    }
    const item = new vscode.NotebookCellStatusBarItem(
      '$(shield) Cautions',
      vscode.NotebookCellStatusBarAlignment.Right,
    );
    item.tooltip = texts.join('\n\n');
    item.command = commands.showCautions;
    return [item];
  }

  async show(): Promise<void> {
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    const texts = notebook ? this.textsFor(notebook) : [];
    const detail = texts.length > 0 ? texts.join('\n\n') : 'This sheet holds nothing that calls for one.';
    await vscode.window.showInformationMessage('Cautions', { modal: true, detail });
  }

  private textsFor(notebook: vscode.NotebookDocument): string[] {
    const sheet = this.sheets.of(notebook);
    sheet?.update();
    return sheet ? sheet.session.cautions().map(({ text }) => text) : [];
  }
}
