import * as vscode from 'vscode';
import { hoverAt } from '../core';
import type { OpenSheets } from './open-sheets';

/** Shows what core tells of the conductor, name, function or unit under the pointer. */
export class SheetHovers implements vscode.HoverProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideHover(document: vscode.TextDocument, position: vscode.Position): vscode.Hover | undefined {
    const spot = this.sheets.spot(document, position);
    const found = spot && hoverAt(spot.session, spot.cell.id, spot.offset);
    return found && new vscode.Hover(new vscode.MarkdownString(found.markdown), spot.cell.range(found.span));
  }
}
