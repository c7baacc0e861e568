import * as vscode from 'vscode';
import type { SheetController } from './controller';
import type { OpenSheets } from './open-sheets';

/** Says so under a cell whose results are older than the sheet's text, which happens when automatic refresh is off. */
export class OutOfDateMarks implements vscode.NotebookCellStatusBarItemProvider {
  readonly onDidChangeCellStatusBarItems: vscode.Event<void>;

  constructor(
    private readonly sheets: OpenSheets,
    private readonly controller: SheetController,
  ) {
    this.onDidChangeCellStatusBarItems = controller.onDidShow;
  }

  provideCellStatusBarItems(cell: vscode.NotebookCell): vscode.NotebookCellStatusBarItem[] {
    const sheet = this.sheets.of(cell.notebook);
    if (!sheet?.editable || sheet.refreshesItself || !this.controller.isOutOfDate(sheet, cell)) {
      return [];
    }
    const item = new vscode.NotebookCellStatusBarItem(
      '$(history) Out of date',
      vscode.NotebookCellStatusBarAlignment.Left,
    );
    item.tooltip = 'The sheet changed since these results were shown. Run the cell or Refresh Results to renew them.';
    return [item];
  }
}
