import * as vscode from 'vscode';
import { languageId, notebookType } from './names';
import { cellId, isCalculation, type OpenSheet, type OpenSheets } from './open-sheets';
import { notebookOutputs, type Presentation, present, shownMarkdown } from './presentation';

const controllerId = 'kilofoot';

/**
 * Puts results under cells. Evaluation is a pure function of the sheet's text and takes a moment; the traffic to the
 * editor is what costs, so only what differs from what is shown is sent, and no output is waited for.
 */
export class SheetController implements vscode.Disposable {
  private readonly controller: vscode.NotebookController;
  private readonly bound = new Set<vscode.NotebookDocument>();
  /** What was last put under each cell; the editor's own copy lags behind. */
  private readonly shown = new WeakMap<vscode.NotebookCell, string>();
  private readonly stopped = new Set<vscode.NotebookDocument>();
  private readonly looked = new vscode.EventEmitter<void>();
  /** Fires when a sheet was evaluated anew, whether or not its results were put in place. */
  readonly onDidShow = this.looked.event;

  constructor(
    private readonly extensionId: string,
    private readonly sheets: OpenSheets,
    private readonly refreshed: (sheet: OpenSheet) => void,
  ) {
    this.controller = vscode.notebooks.createNotebookController(controllerId, notebookType, 'Kilofoot');
    this.controller.supportedLanguages = [languageId];
    this.controller.supportsExecutionOrder = false;
    this.controller.description = 'Evaluates sheets as you type';
    this.controller.executeHandler = (cells, notebook) => this.run(cells, notebook);
    this.controller.interruptHandler = (notebook) => void this.stopped.add(notebook);
    this.controller.onDidChangeSelectedNotebooks(({ notebook, selected }) => {
      if (selected) {
        this.bound.add(notebook);
        this.show(notebook);
      } else {
        this.bound.delete(notebook);
      }
    });
  }

  dispose(): void {
    this.looked.dispose();
    this.controller.dispose();
  }

  /** Takes charge of a sheet in an editor without a picker, and brings what it shows up to date. */
  async attach(editor: vscode.NotebookEditor): Promise<void> {
    if (this.bound.has(editor.notebook)) {
      this.show(editor.notebook);
      return;
    }
    this.controller.updateNotebookAffinity(editor.notebook, vscode.NotebookControllerAffinity.Preferred);
    const choice = { notebookEditor: editor, id: controllerId, extension: this.extensionId };
    await vscode.commands.executeCommand('notebook.selectKernel', choice);
  }

  /** Puts new results under the cells whose results changed; `always` even when the sheet is not to refresh itself. */
  show(notebook: vscode.NotebookDocument, always = false): void {
    const sheet = this.sheets.of(notebook);
    if (!sheet?.editable) {
      return;
    }
    sheet.update();
    this.refreshed(sheet);
    if (this.bound.has(notebook) && (always || sheet.refreshesItself)) {
      for (const cell of notebook.getCells()) {
        if (this.isOutOfDate(sheet, cell)) {
          this.write(cell, present(sheet.session, cellId(cell)));
        }
      }
    }
    this.looked.fire();
  }

  /** True when a cell shows other results than the sheet's text gives. */
  isOutOfDate(sheet: OpenSheet, cell: vscode.NotebookCell): boolean {
    const now = isCalculation(cell) ? present(sheet.session, cellId(cell)).markdown : '';
    return now !== (this.shown.get(cell) ?? shownMarkdown(cell));
  }

  /** To be told when the editor's outputs changed, which a person may have done by clearing them. */
  outputsChanged(cell: vscode.NotebookCell): void {
    if (cell.outputs.length === 0) {
      this.shown.set(cell, '');
    }
  }

  forget(notebook: vscode.NotebookDocument): void {
    this.bound.delete(notebook);
    this.stopped.delete(notebook);
  }

  /** Runs cells because a person asked: each one is marked as run, and whatever depends on them follows. */
  private async run(cells: readonly vscode.NotebookCell[], notebook: vscode.NotebookDocument): Promise<void> {
    const sheet = this.sheets.of(notebook);
    if (!sheet?.editable) {
      return;
    }
    this.bound.add(notebook);
    this.stopped.delete(notebook);
    sheet.update();
    this.refreshed(sheet);
    for (const [index, cell] of cells.entries()) {
      if (this.stopped.has(notebook)) {
        return;
      }
      this.write(cell, present(sheet.session, cellId(cell)));
      if (index % 100 === 99) {
        await new Promise((resolve) => setTimeout(resolve)); // Lets a Stop through.
      }
    }
    this.show(notebook, true);
  }

  private write(cell: vscode.NotebookCell, presentation: Presentation): void {
    const execution = this.execution(cell);
    if (!execution) {
      return;
    }
    // Without times no cell shows how long it took, which would be noise for something that is always up to date.
    execution.start();
    if (presentation.markdown !== (this.shown.get(cell) ?? shownMarkdown(cell))) {
      this.shown.set(cell, presentation.markdown);
      void execution.replaceOutput(notebookOutputs(presentation));
    }
    execution.end(!presentation.failed);
  }

  /** Undefined where the editor allows none now: the cell was just deleted, or its notebook given to another kernel. */
  private execution(cell: vscode.NotebookCell): vscode.NotebookCellExecution | undefined {
    try {
      return cell.index < 0 ? undefined : this.controller.createNotebookCellExecution(cell);
    } catch {
      return undefined;
    }
  }
}
