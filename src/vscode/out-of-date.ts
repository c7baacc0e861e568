import * as vscode from 'vscode';
import type { SheetController } from './controller';
import type { OpenSheets } from './open-sheets';

/** Says so under a cell whose results are older than the sheet's text, which happens when automatic refresh is off. */
export class OutOfDateMarks implements vscode.NotebookCellStatusBarItemProvider, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  readonly onDidChangeCellStatusBarItems = this.changed.event;
  private readonly listening: vscode.Disposable;
  /** Notebooks that may show marks: the editor asks for every cell in view, so it is not asked to without need. */
  private readonly marked = new WeakSet<vscode.NotebookDocument>();

  constructor(
    private readonly sheets: OpenSheets,
    private readonly controller: SheetController,
  ) {
    this.listening = controller.onDidShow((sheet) => {
      if (!sheet.refreshesItself || this.marked.delete(sheet.notebook)) {
        this.changed.fire();
      }
    });
  }

  dispose(): void {
    this.listening.dispose();
    this.changed.dispose();
  }

  provideCellStatusBarItems(cell: vscode.NotebookCell): vscode.NotebookCellStatusBarItem[] {
    const sheet = this.sheets.of(cell.notebook);
    if (!sheet?.editable || sheet.refreshesItself || !this.controller.isOutOfDate(sheet, cell)) {
      return [];
    }
    this.marked.add(cell.notebook);
    const item = new vscode.NotebookCellStatusBarItem(
      vscode.l10n.t('$(history) Out of date'),
      vscode.NotebookCellStatusBarAlignment.Left,
    );
    item.tooltip = vscode.l10n.t(
      'The sheet changed since these results were shown. Run the cell or Refresh Results to renew them.',
    );
    return [item];
  }
}
