import * as vscode from 'vscode';
import { foldsOf } from '../core';
import type { OpenSheets } from './open-sheets';

/** Folds forms, schedules and runs of comments. */
export class SheetFolding implements vscode.FoldingRangeProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideFoldingRanges(document: vscode.TextDocument): vscode.FoldingRange[] {
    return this.sheets.cells(document).flatMap(({ sheet, cell }) =>
      foldsOf(sheet.session, cell.id).map(({ span, kind }) => {
        const { start, end } = cell.range(span);
        return new vscode.FoldingRange(
          start.line,
          end.line,
          kind === 'comment' ? vscode.FoldingRangeKind.Comment : undefined,
        );
      }),
    );
  }
}
