import * as vscode from 'vscode';
import { LiveProseCells } from './live-prose';
import { languageId, notebookType } from './names';
import { cellId, isCalculation, type OpenSheet, type OpenSheets } from './open-sheets';
import { notebookOutputs, nothing, type Presentation, present, shownMarkdown } from './presentation';

const controllerId = 'kilofoot';

/**
 * Puts results under cells. Evaluation is a pure function of the sheet's text and takes a moment; the traffic to the
 * editor is what costs, so a cell that shows what it should is not spoken of, and no output is waited for.
 */
export class SheetController implements vscode.Disposable {
  private readonly controller: vscode.NotebookController;
  private readonly bound = new Set<vscode.NotebookDocument>();
  /** What was last put under each cell; the editor's own copy lags behind. */
  private readonly shown = new WeakMap<vscode.NotebookCell, Shown>();
  /** Cells whose results changed and were not put in place yet. */
  private readonly due = new WeakMap<vscode.NotebookDocument, Set<string>>();
  private readonly stopped = new Set<vscode.NotebookDocument>();
  private readonly prose = new LiveProseCells();
  private readonly looked = new vscode.EventEmitter<OpenSheet>();
  /** Fires when a sheet was evaluated anew, whether or not its results were put in place. */
  readonly onDidShow = this.looked.event;

  constructor(
    private readonly extensionId: string,
    private readonly sheets: OpenSheets,
    private readonly refreshed: (sheet: OpenSheet, changed: ReadonlySet<string>) => void,
  ) {
    this.controller = vscode.notebooks.createNotebookController(controllerId, notebookType, 'Kilofoot');
    this.controller.supportedLanguages = [languageId];
    this.controller.supportsExecutionOrder = false;
    this.controller.description = vscode.l10n.t('Evaluates sheets as you type');
    this.controller.executeHandler = (cells, notebook) => this.run(cells, notebook);
    this.controller.interruptHandler = (notebook) => void this.stopped.add(notebook);
    this.controller.onDidChangeSelectedNotebooks(({ notebook, selected }) => {
      if (selected) {
        this.bound.add(notebook);
        this.show(notebook, { cells: 'all' });
      } else {
        this.bound.delete(notebook);
        for (const cell of notebook.getCells()) {
          this.shown.delete(cell); // Another kernel shows there what it likes.
        }
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

  /**
   * Puts new results under the cells whose results changed; `always` even when the sheet is not to refresh itself,
   * `cells: 'all'` looks at every cell.
   */
  show(notebook: vscode.NotebookDocument, how: { readonly always?: boolean; readonly cells?: 'all' } = {}): void {
    const sheet = this.sheets.of(notebook);
    if (!sheet?.editable) {
      return;
    }
    if (!this.look(sheet)) {
      return; // A file that it names is on its way, and then it is shown.
    }
    if (this.bound.has(notebook) && (how.always || sheet.refreshesItself)) {
      const due = this.due.get(notebook);
      this.due.delete(notebook);
      const cells = how.cells === 'all' ? notebook.getCells() : cellsOf(notebook, due ?? new Set());
      this.write(sheet, cells);
      this.prose.show(sheet, cells);
    }
    this.looked.fire(sheet);
  }

  /** Evaluates what was typed, and notes which cells are to be looked at; false when files are missing for that. */
  private look(sheet: OpenSheet): boolean {
    sheet.update();
    if (sheet.isWaiting) {
      return false;
    }
    const changed = sheet.takeChanged();
    this.refreshed(sheet, changed);
    const due = this.due.get(sheet.notebook) ?? new Set();
    for (const id of changed) {
      due.add(id);
    }
    this.due.set(sheet.notebook, due);
    return true;
  }

  /** True when a cell shows other results than the sheet's text gives. */
  isOutOfDate(sheet: OpenSheet, cell: vscode.NotebookCell): boolean {
    return presentIn(sheet, cell).markdown !== this.shownIn(cell).markdown;
  }

  /** To be told when the editor's outputs changed, which a person may have done by clearing them. */
  outputsChanged(cell: vscode.NotebookCell): void {
    if (cell.outputs.length === 0) {
      this.shown.set(cell, { ...this.shownIn(cell), markdown: '' });
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
    this.look(sheet);
    let before: Thenable<unknown> | undefined;
    for (const [index, cell] of cells.entries()) {
      if (this.stopped.has(notebook)) {
        return;
      }
      this.writeOne(cell, presentIn(sheet, cell));
      if (index % 100 === 99) {
        // Else all is sent before a Stop can come through. What was sent last is on its way meanwhile.
        const now = editorCaughtUp();
        await before;
        before = now;
      }
    }
    this.show(notebook, { always: true });
  }

  /** Puts what changed in place. Cells of which only the output changed share one execution, so one message holds all. */
  private write(sheet: OpenSheet, cells: readonly vscode.NotebookCell[]): void {
    const outputsOnly: [vscode.NotebookCell, Presentation][] = [];
    for (const cell of cells) {
      const presentation = presentIn(sheet, cell);
      const { markdown, success } = this.shownIn(cell);
      if (isCalculation(cell) && success !== !presentation.failed) {
        this.writeOne(cell, presentation);
      } else if (presentation.markdown !== markdown) {
        outputsOnly.push([cell, presentation]);
      }
    }
    const [first] = outputsOnly;
    const execution = first && this.execution(first[0]);
    if (!execution) {
      return;
    }
    execution.start();
    for (const [cell, presentation] of outputsOnly) {
      this.shown.set(cell, { markdown: presentation.markdown, success: !presentation.failed });
      void execution.replaceOutput(notebookOutputs(presentation), cell);
    }
    execution.end(!first[1].failed);
  }

  private writeOne(cell: vscode.NotebookCell, presentation: Presentation): void {
    const execution = this.execution(cell);
    if (!execution) {
      return;
    }
    // Without times no cell shows how long it took, which would be noise for something that is always up to date.
    execution.start();
    if (presentation.markdown !== this.shownIn(cell).markdown) {
      void execution.replaceOutput(notebookOutputs(presentation));
    }
    execution.end(!presentation.failed);
    this.shown.set(cell, { markdown: presentation.markdown, success: !presentation.failed });
  }

  private shownIn(cell: vscode.NotebookCell): Shown {
    return this.shown.get(cell) ?? { markdown: shownMarkdown(cell), success: cell.executionSummary?.success };
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

/** Waits until the editor has taken what was sent: its answer to anything comes after that. */
const editorCaughtUp = (): Thenable<unknown> => vscode.commands.executeCommand('setContext', 'kilofoot.caughtUp', true);

/** What a cell shows in the editor. */
interface Shown {
  readonly markdown: string;
  /** The mark of its last run; undefined for none. */
  readonly success: boolean | undefined;
}

/** What a cell is to show; nothing when it holds no calculation. */
const presentIn = (sheet: OpenSheet, cell: vscode.NotebookCell): Presentation =>
  isCalculation(cell) ? present(sheet.session, cellId(cell)) : nothing;

const cellsOf = (notebook: vscode.NotebookDocument, ids: ReadonlySet<string>): vscode.NotebookCell[] =>
  ids.size === 0 ? [] : notebook.getCells().filter((cell) => ids.has(cellId(cell)));
