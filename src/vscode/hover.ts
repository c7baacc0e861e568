import * as vscode from 'vscode';
import { hoverAt } from '../core';
import { cellId, type OpenSheets } from './open-sheets';
import { Positions } from './positions';

/** Shows what core tells of the conductor, name, function or unit under the pointer. */
export class SheetHovers implements vscode.HoverProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideHover(document: vscode.TextDocument, position: vscode.Position): vscode.Hover | undefined {
    const sheet = this.sheets.withDocument(document);
    sheet?.update();
    const positions = new Positions(document);
    const found = sheet && hoverAt(sheet.session, cellId({ document }), positions.offset(position));
    return found && new vscode.Hover(new vscode.MarkdownString(found.markdown), positions.range(found.span));
  }
}
