import * as vscode from 'vscode';
import { commands } from './names';
import { isCalculation, type OpenSheet, type OpenSheets } from './open-sheets';

const acknowledging = vscode.l10n.t(
  'Read and known? A line `cautions: acknowledged` in the front matter leaves them out here; a report prints them always.',
);

/** Advice about work that can hurt someone: once a sheet, under its first calculation cell, and on a command. */
export class Cautions implements vscode.NotebookCellStatusBarItemProvider, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  readonly onDidChangeCellStatusBarItems = this.changed.event;
  private readonly listening: vscode.Disposable;
  /** What each notebook was last told; the editor asks for every cell in view, so it is not asked to without need. */
  private readonly told = new WeakMap<vscode.NotebookDocument, string>();

  constructor(
    private readonly sheets: OpenSheets,
    evaluated: vscode.Event<OpenSheet>,
  ) {
    this.listening = evaluated(({ notebook }) => {
      const before = this.told.get(notebook);
      if (before !== this.markFor(notebook)) {
        this.changed.fire();
      }
    });
  }

  dispose(): void {
    this.listening.dispose();
    this.changed.dispose();
  }

  provideCellStatusBarItems(cell: vscode.NotebookCell): vscode.NotebookCellStatusBarItem[] {
    if (cell !== cell.notebook.getCells().find(isCalculation)) {
      return [];
    }
    const text = this.markFor(cell.notebook);
    this.told.set(cell.notebook, text);
    if (text === '') {
      return [];
    }
    const item = new vscode.NotebookCellStatusBarItem(
      vscode.l10n.t('$(shield) Cautions'),
      vscode.NotebookCellStatusBarAlignment.Right,
    );
    item.tooltip = text;
    item.command = commands.showCautions;
    return [item];
  }

  async show(): Promise<void> {
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    const texts = notebook ? this.textsFor(notebook) : [];
    const detail =
      texts.length > 0
        ? [...texts, acknowledging].join('\n\n')
        : vscode.l10n.t('This sheet holds nothing that calls for one.');
    await vscode.window.showInformationMessage(vscode.l10n.t('Cautions'), { modal: true, detail });
  }

  /** What stands under the sheet; nothing when whoever wrote it has read the cautions. */
  private markFor(notebook: vscode.NotebookDocument): string {
    const texts = this.textsFor(notebook);
    return this.sheets.of(notebook)?.session.cautionsAcknowledged ? '' : texts.join('\n\n');
  }

  private textsFor(notebook: vscode.NotebookDocument): string[] {
    const sheet = this.sheets.of(notebook);
    sheet?.update();
    return sheet ? sheet.session.cautions().map(({ text }) => text) : [];
  }
}
