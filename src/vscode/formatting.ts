import type * as vscode from 'vscode';
import { formattingEdits } from '../core';
import type { OpenSheets } from './open-sheets';

/** Lays out calculation cells; the prose around them stays as it is, and so does a whole sheet of a later format. */
export class SheetFormatting
  implements vscode.DocumentFormattingEditProvider, vscode.DocumentRangeFormattingEditProvider
{
  constructor(private readonly sheets: OpenSheets) {}

  provideDocumentFormattingEdits(document: vscode.TextDocument): vscode.TextEdit[] {
    return this.cells(document).flatMap(({ sheet, cell }) => cell.textEdits(formattingEdits(sheet.session, cell.id)));
  }

  provideDocumentRangeFormattingEdits(document: vscode.TextDocument, range: vscode.Range): vscode.TextEdit[] {
    return this.cells(document).flatMap(({ sheet, cell }) => {
      const within = cell.within(range);
      return within ? cell.textEdits(formattingEdits(sheet.session, cell.id, within)) : [];
    });
  }

  private cells(document: vscode.TextDocument): ReturnType<OpenSheets['cells']> {
    return this.sheets.cells(document).filter(({ sheet }) => !sheet.session.newerFormat);
  }
}
